/** What every ion shows in every standard test, worked out once for the whole build. */
import { mayBe } from "../../engine/bench/agreement.ts";
import { cannotBe } from "../../engine/bench/allowed-salts.ts";
import type { Prediction } from "../../engine/bench/prediction.ts";
import { type SimpleSalt, saltOf } from "../../engine/bench/salt.ts";
import { STANDARD_TESTS, type StandardTest } from "../../engine/constants/standard-tests.ts";
import { standardPart } from "../../engine/practical/standard-parts.ts";
import type { Gas, Observation, Part } from "../../engine/practical.ts";
import { predictor } from "../predictor.ts";

/** Strength of the sample, mol/dm3: stated beside every table. */
export const TRIED_AT = 0.1;

/** Tests for powders that water leaves: of a solution they show nothing that the alkalis by themselves do not. */
const FOR_POWDERS = ["acid-then-alkali", "acid-then-ammonia"];
/** Tests for ions in solution, in the order of the list. */
export const TESTS_IN_SOLUTION = STANDARD_TESTS.filter(({ id }) => !FOR_POWDERS.includes(id));

/** The tests that look for each kind of ion. What a cation shows in a test for anions is told too, but apart. */
const LOOKS_FOR: Readonly<Record<"cation" | "anion", readonly string[]>> = {
  cation: [
    ...["sodium-hydroxide", "ammonia", "ammonium", "flame", "iodide", "sulfuric-acid", "carbonate-or-not", "chromate"],
    ...["thiocyanate", "hexacyanoferrate-ii", "hexacyanoferrate-iii"],
  ],
  anion: [
    ...["carbonate", "sulfate", "sulfite", "halide", "nitrate", "hydrogencarbonate", "sulfuric-acid", "manganate"],
    ...["nitrite", "chlorine-water", "lead"],
  ],
};

/** What one ion shows in one test. */
export interface StandardSight {
  test: StandardTest;
  /** The salt that brings the ion. */
  salt: SimpleSalt;
  /** One for each stage of the test. */
  stages: Prediction[];
  /** Some stage shows another sight than water would: the ion's own. */
  own: boolean;
  /** Gases the ion gives off and water would not. */
  gases: Gas[];
}

export const isCation = (ion: string): boolean => ion.endsWith("+");

const isFoil = (test: StandardTest): boolean => test.tests.flat().some(({ add }) => add === "Al(s)");

/** Partner ions of a cation, the first that dissolves with it; none of them shows anything of its own in the test. */
const partnersIn = (test: StandardTest): readonly string[] => (isFoil(test) ? ["Cl-", "SO4^2-"] : ["NO3-", "SO4^2-"]);

/** The salt that brings an ion into a test: of a cation the nitrate, or what the test does not itself look for; of an anion the sodium salt. */
function saltFor(ion: string, test: StandardTest): SimpleSalt | undefined {
  if (!isCation(ion)) return saltOf("Na+", ion);
  const form = { given: "solution", concentration: { molPerDm3: TRIED_AT } } as const;
  return partnersIn(test)
    .map((partner) => saltOf(ion, partner))
    .find((salt) => cannotBe(salt, form, predictor.solve) === undefined);
}

export const partOf = (test: StandardTest): Part => standardPart(test, "a", "solution");

const shownBy = (ions: Readonly<Record<string, number>>, part: Part): Prediction[] => [
  ...predictor.predict({ ions, molPerDm3: TRIED_AT }, [part]).values(),
];

/** What an ion is held against: a cation against water, an anion against sodium with an anion that the test does not look for. */
const blankFor = (ion: string, test: StandardTest): Readonly<Record<string, number>> =>
  isCation(ion) ? {} : { "Na+": 1, [partnersIn(test)[0]]: 1 };

const known = new Map<string, StandardSight[]>();

/** What an ion shows, test by test; a test for which no salt of the ion dissolves is left out. */
export function standardSights(ion: string): StandardSight[] {
  const before = known.get(ion);
  if (before) return before;
  const sights = TESTS_IN_SOLUTION.flatMap((test): StandardSight[] => {
    const salt = saltFor(ion, test);
    if (!salt) return [];
    const part = partOf(test);
    const stages = shownBy(salt.ions, part);
    const blank = shownBy(blankFor(ion, test), part);
    const gases = stages.flatMap((stage, n) => stage.gases.filter((gas) => !blank[n].gases.includes(gas)));
    return [
      {
        test,
        salt,
        stages,
        own: stages.some((stage, n) => isOwn(stage, blank[n])),
        gases: [...new Set(gases)],
      },
    ];
  });
  known.set(ion, sights);
  return sights;
}

const textOf = (readings: readonly Observation[]): string => JSON.stringify(readings);

/** A sight of the ion's own: something happens that does not in water, or no reading could be of water. */
function isOwn({ readings, events }: Prediction, blank: Prediction): boolean {
  if (readings.length === 0 || readings.every(({ none }) => none === true)) return false;
  if (textOf(readings) === textOf(blank.readings)) return false;
  return events.length > blank.events.length || !sharesReading(readings, blank.readings);
}

/** Whether a test looks for ions of this kind. */
export const isFor = (ion: string, { id }: StandardTest): boolean => aimed(ion).includes(id);

/**
 * Whether a test tells of an ion: because it looks for ions of this kind, or because it changes this one's oxidation state. Warm alkali without
 * ammonia only says again what sodium hydroxide said.
 */
export function looksFor({ test, stages, gases }: StandardSight, ion: string): boolean {
  if (test.id === "ammonium") return gases.length > 0;
  return (
    isFor(ion, test) || (!isFoil(test) && stages.some(({ events }) => events.some(({ kind }) => kind === "redox")))
  );
}

const aimed = (ion: string): readonly string[] => LOOKS_FOR[isCation(ion) ? "cation" : "anion"];

/** Place of a test among those for ions of this kind, the usual ones first. */
export const rankFor = (ion: string, test: StandardTest): number =>
  isFor(ion, test) ? aimed(ion).indexOf(test.id) : aimed(ion).length;

/** Two ions may be taken for each other in a test when in each of its stages some reading of the one is a reading of the other. */
export const alike = (one: StandardSight, other: StandardSight): boolean =>
  one.stages.every((stage, n) => sharesReading(stage.readings, other.stages[n].readings));

const sharesReading = (some: readonly Observation[], others: readonly Observation[]): boolean =>
  some.some((a) => others.some((b) => mayBe(a, b) && mayBe(b, a)));
