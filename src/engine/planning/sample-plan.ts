/** How much of each sample the tests use, and how much to set out so that a third stays back. */
import * as say from "#words/bench.ts";
import type { SampleForm } from "./bench-plan.ts";
import { printed, setOutOfSample, tidy } from "./portions.ts";
import type { TubePlan } from "./tube-plan.ts";

/**
 * @example sampleAmounts([...two parts of 1 cm3 each]) // { needed: "2 cm3 of solution", setOut: "3 cm3 of solution, 1 cm3 of it kept back" }
 */
export function sampleAmounts(plans: readonly Pick<TubePlan, "solutionCm3" | "solidG">[]): {
  needed: string;
  setOut: string;
  forms: SampleForm[];
} {
  const sum = (one: "solutionCm3" | "solidG") => tidy(plans.reduce((total, plan) => total + plan[one], 0));
  const forms = [
    { needed: sum("solutionCm3"), unit: "cm3", of: "solution" as const },
    { needed: sum("solidG"), unit: "g", of: "solid" as const },
  ]
    .filter(({ needed }) => needed > 0)
    .map((form) => ({ ...form, setOut: setOutOfSample(form.needed, form.of) }));
  return {
    needed: say.needed(forms.map(({ needed, unit, of }) => ({ amount: `${printed(needed)} ${unit}`, of }))),
    setOut: say.setOut(
      forms.map(({ needed, setOut, unit, of }) => ({
        amount: `${printed(setOut)} ${unit}`,
        of,
        kept: `${printed(setOut - needed)} ${unit}`,
      })),
    ),
    forms: forms.map(({ of, needed, setOut }) => ({ of, needed, setOut })),
  };
}
