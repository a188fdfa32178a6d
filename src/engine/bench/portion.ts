/**
 * How much is added: drops, a volume, or "in excess". One rule for the bench and for its plan: it hangs on what the paper pours, never on
 * what the sample holds, for whoever pours does not know that yet.
 */
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import { type Reagent, reagents } from "../constants/reagents.ts";
import type { Step } from "../practical.ts";

/** What has been poured into a tube so far, as far as an excess hangs on it. */
export interface Poured {
  /** Sample solution taken, cm3; 0 of a solid. */
  sampleCm3: number;
  /** All liquid, cm3. */
  cm3: number;
  /** Acid that reagents have brought, less the alkali they have brought, mmol of H+. */
  acid: number;
}

export const NOTHING_POURED: Poured = { sampleCm3: 0, cm3: 0, acid: 0 };

/** Liquid that stays with a residue: the paper and the solid are wet. */
export const CLINGS = { value: 0.2, unit: "cm3", source: "common practice, no source: a few drops" } as const;

type Addition = Extract<Step, { do: "add" }>;

/** H+ that one mole gives, or takes where it is below 0, until nothing of the alkali is left. */
const GIVES_ACID: Readonly<Record<string, number>> = {
  "H+": 1,
  "OH-": -1,
  NH3: -1,
  CH3COOH: 1,
  "CO3^2-": -2,
  "SO3^2-": -2,
};

const byId = new Map(reagents.map((reagent) => [reagent.id, reagent]));

/** H+ in a reagent, mol/dm3; below 0 for an alkali. */
function acidIn({ components, concentration, sulfuricAcid = 0 }: Reagent, molPerDm3?: number): number {
  const each = Object.entries(components).reduce((sum, [ion, n]) => sum + n * (GIVES_ACID[ion] ?? 0), 0);
  return each * (molPerDm3 ?? concentration ?? 1) + 2 * sulfuricAcid;
}

const acidOf = ({ reagent, at }: Addition): number => {
  const bottle = byId.get(reagent);
  return bottle ? acidIn(bottle, at?.molPerDm3) : 0;
};

/**
 * Volume of an addition to a tube, cm3; 0 for pieces of a solid. "In excess" is BENCH_PRACTICE.excess, or three times a larger sample (of
 * a solid: what it was dissolved in), or half as much again as neutralises what acid or alkali the tube holds from its reagents.
 *
 * @example volumeAdded({ do: "add", reagent: "NaOH(aq)", amount: { inExcess: true } }, { sampleCm3: 1, cm3: 1, acid: 0 }) // 4
 * @example volumeAdded({ do: "add", reagent: "NaOH(aq)", amount: { inExcess: true } }, { sampleCm3: 1, cm3: 9, acid: 8 }) // 12
 */
export function volumeAdded(step: Addition, { sampleCm3, cm3, acid }: Poured): number {
  const { amount } = step;
  if ("drops" in amount) return amount.drops * BENCH_PRACTICE.drop.value;
  if ("volume" in amount) return amount.volume.cm3;
  if ("pieces" in amount) return 0;
  const { excess, excessTimesSample, excessTimesNeutral, excessMost } = BENCH_PRACTICE;
  const brings = acidOf(step);
  const neutralises = brings * acid < 0 ? -acid / brings : 0;
  return Math.max(
    excess.value,
    excessTimesSample.value * (sampleCm3 || cm3),
    Math.min(excessTimesNeutral.value * neutralises, excessMost.value),
  );
}

/** What has been poured into a tube after one more step. */
export function pouredAfter(before: Poured, step: Step): Poured {
  if (step.do === "take" && "volume" in step) {
    const { cm3 } = step.volume;
    return { ...before, sampleCm3: before.sampleCm3 + cm3, cm3: before.cm3 + cm3 };
  }
  if (step.do === "add") {
    const cm3 = volumeAdded(step, before);
    return { ...before, cm3: before.cm3 + cm3, acid: before.acid + cm3 * acidOf(step) };
  }
  if (step.do === "filter" && step.keep === "residue" && before.cm3 > CLINGS.value) {
    return { ...before, cm3: CLINGS.value, acid: (before.acid * CLINGS.value) / before.cm3 };
  }
  return step.do === "wash" ? { ...before, acid: 0 } : before;
}
