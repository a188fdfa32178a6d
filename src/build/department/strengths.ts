/** The school's own bottles and list of ions, put where an author has left them to the house. */
import { reagents } from "../../engine/constants/reagents.ts";
import type { Practical, Procedure, Step } from "../../engine/practical.ts";
import type { Department } from "./read-department.ts";

/** What a step adds or leads a gas through, as a reagent's id. */
const reagentIn = (step: Step): string | undefined =>
  step.do === "add" ? step.reagent : step.do === "lead through" ? "Ca(OH)2(aq)" : undefined;

/** Strength of the school's bottle where it is another than the usual one and the step names none, mol/dm3. */
function houseStrength(step: Step, { strengths }: Department): number | undefined {
  const id = reagentIn(step);
  if (id === undefined || !Object.hasOwn(strengths, id) || ("at" in step && step.at)) return undefined;
  return reagents.find((one) => one.id === id)?.concentration === strengths[id] ? undefined : strengths[id];
}

/** The procedure with the school's strengths written into its steps. */
export function atHouseStrengths(parts: Procedure, department: Department): Procedure {
  const filled = (step: Step): Step => {
    const molPerDm3 = houseStrength(step, department);
    return molPerDm3 === undefined ? step : ({ ...step, at: { molPerDm3 } } as Step);
  };
  return parts.map((part) => ({
    ...part,
    tests: part.tests.map((test) => ({ ...test, steps: test.steps.map(filled) })),
  }));
}

/** "NaOH(aq) at 0.5 mol/dm3" for each bottle of the school that the practical leaves to the house. */
export function strengthsAtWork({ parts }: Practical, department: Department): string[] {
  const steps = parts.flatMap((part) => part.tests.flatMap((test) => test.steps));
  const found = steps.flatMap((step) => {
    const at = houseStrength(step, department);
    return at === undefined ? [] : [`${reagentIn(step)} at ${at} mol/dm3`];
  });
  return [...new Set(found)];
}

/** The school's bottles that are not of the usual strength. */
export function houseBottles({ strengths }: Department): { id: string; name: string; molPerDm3: number }[] {
  return reagents.flatMap(({ id, name, concentration }) =>
    Object.hasOwn(strengths, id) && strengths[id] !== concentration ? [{ id, name, molPerDm3: strengths[id] }] : [],
  );
}

/** A page's data with the school's list where its paper offers the ions `department`. */
export function withHouseIons(data: unknown, { ions }: Department): unknown {
  const isGroup = (one: unknown): one is Record<string, unknown> =>
    typeof one === "object" && one !== null && !Array.isArray(one);
  if (!ions || !isGroup(data) || !isGroup(data.paper)) return data;
  const { paper } = data;
  const kinds = (["cations", "anions"] as const).filter((kind) => paper[kind] === "department");
  return { ...data, paper: { ...paper, ...Object.fromEntries(kinds.map((kind) => [kind, ions[kind]])) } };
}
