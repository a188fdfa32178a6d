/** A salt in a part, and the same with one thing changed. */
import { reagents } from "../../constants/reagents.ts";
import type { Part, Step } from "../../practical.ts";
import { NOTHING_POURED, type Poured, pouredAfter, volumeAdded } from "../portion.ts";
import type { TestedSalt } from "../sample.ts";
import { IMPURITIES } from "./impurities.ts";
import { ALKALIS, BARIUM, SILVER } from "./line.ts";

export interface Trial {
  salt: TestedSalt;
  part: Part;
}

type Addition = Extract<Step, { do: "add" }>;

/** @param to what takes the place of an addition, told what the paper has poured before it */
function change(part: Part, to: (step: Addition, before: Poured) => readonly Step[]): Part {
  let poured = NOTHING_POURED;
  const changed = (step: Step): readonly Step[] => {
    const before = poured;
    poured = pouredAfter(before, step);
    return step.do === "add" ? to(step, before) : [step];
  };
  return { ...part, tests: part.tests.map((test) => ({ ...test, steps: test.steps.flatMap(changed) })) };
}

/** The part up to a line, then shaken and looked at: a line of its own that says whether a solid is left. */
export const shakenAfter = (part: Part, index: number): Part => ({
  ...part,
  tests: [...part.tests.slice(0, index + 1), { steps: [{ do: "shake" }] }],
});

/** Reagents that bring chloride or sulfate, each with the one that brings as much of the same cation as nitrate. */
const TWINS: Readonly<Record<string, { nitrate: string; times: number }>> = {
  "HCl(aq)": { nitrate: "HNO3(aq)", times: 1 },
  "H2SO4(aq)": { nitrate: "HNO3(aq)", times: 2 },
  "BaCl2(aq)": { nitrate: "Ba(NO3)2(aq)", times: 1 },
};

/** Strength of what is added, mol/dm3: the paper's, or the usual one of the bottle. */
function strengthOf({ reagent, at }: Addition): number {
  return at?.molPerDm3 ?? reagents.find(({ id }) => id === reagent)?.concentration ?? 1;
}

/** The part with nitrate in the place of every chloride and sulfate that its reagents bring. */
export const withNitrates = (part: Part): Part =>
  change(part, (step) => {
    const twin = TWINS[step.reagent];
    if (!twin) return [step];
    return [{ ...step, reagent: twin.nitrate, at: { molPerDm3: strengthOf(step) * twin.times } }];
  });

/** Nitric acid that leaves no carbonate, sulfite or hydroxide of a test-tube sample, cm3 at 1 mol/dm3. */
const PLENTY_CM3 = 3;

/** The part with plenty of nitric acid just before the silver or barium salt. */
export const wellAcidified = (part: Part): Part =>
  change(part, (step) =>
    [...SILVER, ...BARIUM].includes(step.reagent)
      ? [{ do: "add", reagent: "HNO3(aq)", amount: { volume: { cm3: PLENTY_CM3 } }, at: { molPerDm3: 1 } }, step]
      : [step],
  );

/** Strength of the carbonate solution that brings the impurity with hardly any volume, mol/dm3. */
const STRONG_CARBONATE = 1;

/** The part with alkalis that hold carbonate: so much for each mole of each alkali. */
const withCarbonate = (part: Part, carbonate: Readonly<Record<string, number>>): Part =>
  change(part, (step, before) => {
    const part = carbonate[step.reagent];
    if (part === undefined) return [step];
    const cm3 = (volumeAdded(step, before) * strengthOf(step) * part) / STRONG_CARBONATE;
    return [
      step,
      { do: "add", reagent: "Na2CO3(aq)", amount: { volume: { cm3 } }, at: { molPerDm3: STRONG_CARBONATE } },
    ];
  });

/** The part with alkalis that have taken up carbon dioxide from the air. */
export const withOldAlkali = (part: Part): Part =>
  withCarbonate(part, Object.fromEntries(ALKALIS.map((alkali) => [alkali, IMPURITIES.oldAlkali.value])));

/** The part with the carbonate that alkalis may hold on the bench: sodium hydroxide as it is sold, ammonia from the air since. */
export const withBenchAlkali = (part: Part): Part =>
  withCarbonate(part, { "NaOH(aq)": IMPURITIES.soldSodiumHydroxide.value, "NH3(aq)": IMPURITIES.oldAlkali.value });

/** The same with tap water: in the sample solution, or poured on a solid (its chloride as ammonium chloride, which disturbs nothing). */
export function withTapWater({ salt, part }: Trial): Trial {
  const chloride = IMPURITIES.tapChloride.value;
  const each = salt.molPerDm3 ? chloride / salt.molPerDm3 : 0;
  const { "Na+": sodium = 0, "Cl-": own = 0 } = salt.ions;
  return {
    salt: each > 0 ? { ...salt, ions: { ...salt.ions, "Na+": sodium + each, "Cl-": own + each } } : salt,
    part: change(part, (step) =>
      step.reagent === "H2O(l)" ? [{ ...step, reagent: "NH4Cl(aq)", at: { molPerDm3: chloride } }] : [step],
    ),
  };
}
