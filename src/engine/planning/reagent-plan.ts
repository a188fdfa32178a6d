/** The reagents of a bench: how much of each is used over all tubes, how much to set out, and what to mind. */
import * as say from "#words/bench.ts";
import { said } from "#words/constants.ts";
import { reagentName } from "#words/steps.ts";
import type { Caution } from "../constants/bench-cautions.ts";
import { type FirstAid, type Reagent, reagents } from "../constants/reagents.ts";
import type { GivenSample, Part, Statement } from "../practical.ts";
import type { PlannedReagent } from "./bench-plan.ts";
import type { ReagentCaution } from "./cautions.ts";
import { alkaliForAluminium, printed, setOutOfReagent, tidy, withSpare } from "./portions.ts";
import type { ReagentUse, TubePlan } from "./tube-plan.ts";

/** First aid says how bad a reagent can be: 0 can blind or poison, 2 irritant, 3 good order. */
const RANK: Readonly<Record<FirstAid, Caution["rank"]>> = { corrosive: 0, toxic: 0, gas: 0, irritant: 2, rinse: 3 };

/** The reagent with this id. Throws a RangeError that names the ids there are. */
export function reagentOf(id: string): Reagent {
  const reagent = reagents.find((one) => one.id === id);
  if (reagent) return reagent;
  throw new RangeError(
    `bench plan, reagents: found "${id}", expected one of ${reagents.map((one) => one.id).join(", ")}`,
  );
}

/** The name of a reagent, as the language has it. */
export const nameOf = (id: string): string => reagentName(id, reagentOf(id).name);

/** How bad a reagent is by itself: 0 can blind or poison, 2 irritates, 3 asks for good order only. */
export const reagentRank = (id: string): Caution["rank"] => RANK[reagentOf(id).firstAid];

/** The strength in use, mol/dm3; null where it has no meaning. */
const strengthOf = (use: Pick<ReagentUse, "id" | "molPerDm3">): number | null =>
  use.molPerDm3 ?? reagentOf(use.id).concentration;

/** One row for each reagent and strength, in the order of first use. */
export function planReagents(uses: readonly ReagentUse[]): PlannedReagent[] {
  const bottles = new Map<string, ReagentUse[]>();
  for (const use of uses) {
    const key = `${use.id} ${strengthOf(use)}`;
    bottles.set(key, [...(bottles.get(key) ?? []), use]);
  }
  return [...bottles.values()].map((of): PlannedReagent => {
    const reagent = reagentOf(of[0].id);
    const strength = strengthOf(of[0]);
    const neededCm3 = tidy(of.reduce((sum, use) => sum + use.cm3, 0));
    const pieces = of.reduce((sum, use) => sum + use.pieces, 0);
    return {
      id: reagent.id,
      name: reagentName(reagent.id, reagent.name),
      ...(strength !== null && { concentration: `${strength} mol/dm3`, molPerDm3: strength }),
      neededCm3,
      setOutCm3: neededCm3 > 0 ? setOutOfReagent(neededCm3) : 0,
      ...(pieces > 0 && { pieces: Math.ceil(withSpare(pieces)) }),
      cautions: hazardsAt(reagent, strength),
    };
  });
}

/** One sentence or two for each reagent that is more than low hazard, ranked for the whole bench. */
export function reagentCautions(uses: readonly Pick<ReagentUse, "id" | "molPerDm3">[]): ReagentCaution[] {
  return uses.flatMap((use) => {
    const reagent = reagentOf(use.id);
    const told = hazardsAt(reagent, strengthOf(use)).filter((text) => !/^(Low|No) hazard[^.;]*\.$/.test(text));
    if (told.length === 0) return [];
    const own = reagentName(reagent.id, reagent.name);
    const name = own[0].toUpperCase() + own.slice(1);
    // A reagent that is harmless alone but gives a toxic gas stands with the toxic ones.
    const rank = told.some((text) => /toxic(?! to water)/i.test(text)) ? 0 : RANK[reagent.firstAid];
    return [{ id: use.id, rank, text: `${name}: ${told.map(said).map(inSentence).join(" ")}` }];
  });
}

/** The hazards are told for the usual strength. A weaker one keeps them, a stronger one adds the limits that decide. */
export function hazardsAt(reagent: Reagent, strength: number | null): string[] {
  const usual = reagent.concentration;
  if (strength === null || usual === null || strength <= usual) return [...reagent.hazards];
  return [...reagent.hazards, say.stronger(strength, usual, reagent.limits)];
}

const inSentence = (text: string, index: number): string =>
  index === 0 ? text[0].toLowerCase() + text.slice(1) : text;

/** Amounts that make no sense for a reagent, and an excess too small for the strength of the sample. */
export function amountWarnings(
  part: Part,
  sample: GivenSample,
  plan: TubePlan,
  paper: Pick<Statement, "cations">,
): string[] {
  const warnings: string[] = [];
  for (const use of plan.uses) {
    const { id, kind, components, ...reagent } = reagentOf(use.id);
    const name = reagentName(id, reagent.name);
    if (use.cm3 === 0 && use.pieces === 0) {
      warnings.push(say.inPart(part.label, say.wrongAmount(name, kind === "solid" || kind === "paper")));
    }
    const alkali = strengthOf(use);
    const salt = sample.concentration?.molPerDm3;
    if (!use.inExcess || !components["OH-"] || alkali === null || salt === undefined) continue;
    if (!paper.cations.includes("Al^3+") || plan.solutionCm3 === 0) continue;
    const planned = tidy(plan.uses.filter(({ id }) => id === use.id).reduce((sum, one) => sum + one.cm3, 0));
    const acid = Math.max(0, use.acid);
    const least = tidy(alkaliForAluminium(use.sampleCm3, salt, alkali) + acid / alkali);
    if (least > planned) {
      const noExcess = say.noExcess({
        planned: printed(planned),
        reagent: name,
        alkali,
        sampleCm3: printed(use.sampleCm3),
        salt,
        acid: acid > 0,
        least: printed(least),
      });
      warnings.push(say.inPart(part.label, noExcess));
    }
  }
  return warnings;
}
