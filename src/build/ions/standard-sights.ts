/** What every ion shows in every standard test, worked out once for the whole build. */
import { STANDARD_TESTS, type StandardTest } from "../../engine/constants/standard-tests.ts";
import type { Part } from "../../engine/practical.ts";
import { housePart } from "../department/standard-tests.ts";
import { hasFoil, isCation, shareReading, type TriedSight, tryIon } from "./tried.ts";

/** Tests for powders that water leaves: of a solution they show nothing that the alkalis by themselves do not. */
const FOR_POWDERS = ["acid-then-alkali", "acid-then-ammonia"];
/** Tests for ions in solution, in the order of the list. */
const TESTS_IN_SOLUTION = STANDARD_TESTS.filter(({ id }) => !FOR_POWDERS.includes(id));

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

/** What one ion shows in one standard test. */
export interface StandardSight extends TriedSight {
  test: StandardTest;
}

export const partOf = (test: StandardTest): Part => housePart(test, "a", "solution");

const known = new Map<string, StandardSight[]>();

/** What an ion shows, test by test; a test for which no salt of the ion dissolves is left out. */
export function standardSights(ion: string): StandardSight[] {
  const before = known.get(ion);
  if (before) return before;
  const sights = TESTS_IN_SOLUTION.flatMap((test): StandardSight[] => {
    const sight = tryIon(ion, partOf(test));
    return sight ? [{ test, ...sight }] : [];
  });
  known.set(ion, sights);
  return sights;
}

/** Whether a test looks for ions of this kind. */
export const isFor = (ion: string, { id }: StandardTest): boolean => aimed(ion).includes(id);

/**
 * Whether a test tells of an ion: because it looks for ions of this kind, or because it changes this one's oxidation state. Warm alkali without
 * ammonia only says again what sodium hydroxide said.
 */
export function looksFor({ test, stages, gases }: StandardSight, ion: string): boolean {
  if (test.id === "ammonium") return gases.length > 0;
  if (isFor(ion, test)) return true;
  return !hasFoil(partOf(test)) && stages.some(({ events }) => events.some(({ kind }) => kind === "redox"));
}

const aimed = (ion: string): readonly string[] => LOOKS_FOR[isCation(ion) ? "cation" : "anion"];

/** Place of a test among those for ions of this kind, the usual ones first. */
export const rankFor = (ion: string, test: StandardTest): number =>
  isFor(ion, test) ? aimed(ion).indexOf(test.id) : aimed(ion).length;

/** Two ions may be taken for each other in a test when in each of its stages some reading of the one is a reading of the other. */
export const alike = (one: StandardSight, other: StandardSight): boolean =>
  one.stages.every((stage, n) => shareReading(stage.readings, other.stages[n].readings));
