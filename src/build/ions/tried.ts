/** What one ion shows in one part of a procedure, held against what water shows in it. */
import { mayBe } from "../../engine/bench/agreement.ts";
import { cannotBe } from "../../engine/bench/allowed-salts.ts";
import type { Prediction } from "../../engine/bench/prediction.ts";
import { type SimpleSalt, saltOf } from "../../engine/bench/salt.ts";
import type { GivenOff, Observation, Part } from "../../engine/practical.ts";
import { predictor } from "../predictor.ts";

/** Strength of the sample, mol/dm3: stated beside every table. */
export const TRIED_AT = 0.1;

export interface TriedSight {
  /** The salt that brings the ion. */
  salt: SimpleSalt;
  /** One for each stage of the part. */
  stages: Prediction[];
  /** Some stage shows another sight than water would: the ion's own. */
  own: boolean;
  /** Gases the ion gives off and water would not. */
  gases: GivenOff[];
}

export const isCation = (ion: string): boolean => ion.endsWith("+");

/** With foil in alkali nitrate is what is looked for. */
export const hasFoil = ({ tests }: Part): boolean =>
  tests.some(({ steps }) => steps.some((step) => step.do === "add" && step.reagent === "Al(s)"));

/** Partner ions of a cation, the first that dissolves with it; none of them shows anything of its own in the part. */
const partnersIn = (part: Part): readonly string[] => (hasFoil(part) ? ["Cl-", "SO4^2-"] : ["NO3-", "SO4^2-"]);

/** The salt that brings an ion: of a cation the nitrate, or what the part does not itself look for; of an anion the sodium salt. */
function saltFor(ion: string, part: Part): SimpleSalt | undefined {
  if (!isCation(ion)) return saltOf("Na+", ion);
  const form = { given: "solution", concentration: { molPerDm3: TRIED_AT } } as const;
  return partnersIn(part)
    .map((partner) => saltOf(ion, partner))
    .find((salt) => cannotBe(salt, form, predictor.solve) === undefined);
}

const shownBy = (ions: Readonly<Record<string, number>>, part: Part): Prediction[] => [
  ...predictor.predict({ ions, molPerDm3: TRIED_AT }, [part]).values(),
];

/** What an ion is held against: a cation against water, an anion against sodium with an anion that the part does not look for. */
export const blankFor = (kind: "cation" | "anion", part: Part): Prediction[] =>
  shownBy(kind === "cation" ? {} : { "Na+": 1, [partnersIn(part)[0]]: 1 }, part);

/** Undefined when no salt of the ion dissolves that could be taken. */
export function tryIon(ion: string, part: Part): TriedSight | undefined {
  const salt = saltFor(ion, part);
  if (!salt) return undefined;
  const stages = shownBy(salt.ions, part);
  const blank = blankFor(isCation(ion) ? "cation" : "anion", part);
  const gases = stages.flatMap((stage, n) => stage.gases.filter((gas) => !blank[n].gases.includes(gas)));
  return {
    salt,
    stages,
    own: stages.some((stage, n) => isOwn(stage, blank[n])),
    gases: [...new Set(gases)],
  };
}

/** A sight of the ion's own: something happens that does not in water, or no reading could be of water. */
function isOwn({ readings, events }: Prediction, blank: Prediction): boolean {
  if (readings.length === 0 || readings.every(({ none }) => none === true)) return false;
  if (textOf(readings) === textOf(blank.readings)) return false;
  return events.length > blank.events.length || !shareReading(readings, blank.readings);
}

const textOf = (readings: readonly Observation[]): string => JSON.stringify(readings);

/** Whether some reading of the one may be a reading of the other. */
export const shareReading = (some: readonly Observation[], others: readonly Observation[]): boolean =>
  some.some((a) => others.some((b) => mayBe(a, b) && mayBe(b, a)));
