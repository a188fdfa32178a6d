/** What further tests would tell, in sentences; formulas in mhchem notation. */
import type { PredictionTable, TableCell } from "../../engine/bench/prediction-table.ts";
import { type FurtherOutcome, onward, type Remaining } from "../../engine/deduction/further-tests.ts";
import type { NextTest, Outcome } from "../../engine/deduction/next-test.ts";
import { capital } from "../capital.ts";
import { list } from "../sentence.ts";
import type { FurtherList } from "./further-list.ts";

type Salts = Pick<PredictionTable, "salts">;

/** Salts named before they are only counted. */
const NAMED = 4;

const formulas = ({ salts }: Salts, which: readonly number[]): string[] => which.map((salt) => salts[salt].formula);

/** "tells NH4Cl from NH4NO3", "tells A, B and C apart", "tells these 7 salts apart". */
function tells(table: Salts, alike: readonly number[]): string {
  const [one, other] = formulas(table, alike);
  if (alike.length === 2) return `tells ${one} from ${other}`;
  return alike.length > NAMED
    ? `tells these ${alike.length} salts apart`
    : `tells ${list(formulas(table, alike))} apart`;
}

/** "white precipitate", "at the border, slight white precipitate" */
export const wordSight = (
  { words }: Pick<TableCell, "words">,
  outcome: Outcome,
  { atBorder }: Pick<NextTest, "atBorder">,
): string => `${atBorder.includes(outcome) ? "at the border, " : ""}${words[outcome.reading]}`;

/** "P is ZnSO4", "P may be ZnSO4 or ZnCl2", "P is still one of 12 salts". */
export function meaning(table: Salts, sample: string, salts: readonly number[]): string {
  if (salts.length > NAMED) return `${sample} is still one of ${salts.length} salts`;
  const named = formulas(table, salts);
  return named.length === 1 ? `${sample} is ${named[0]}` : `${sample} may be ${list(named, "or")}`;
}

/** "(ask your teacher first)" behind a test that is unsafe on a salt the sample may still hold. */
export const askFirst = ({ unsafeOn }: Pick<NextTest, "unsafeOn">): string =>
  unsafeOn ? " (ask your teacher first)" : "";

/** Before a test that is unsafe: "Ask your teacher before you begin it: P may be PbCl2, on which no class does this test." */
export function warnUnsafe(table: Salts, { sample, unsafeOn = [] }: Pick<NextTest, "sample" | "unsafeOn">): string {
  const may = unsafeOn.length > NAMED ? `one of ${unsafeOn.length} salts` : list(formulas(table, unsafeOn), "or");
  return `Ask your teacher before you begin it: ${sample} may be ${may}, on which no class does this test.`;
}

/** "no test on our list tells NH4Cl from NH4NO3"; one that is unsafe on some of the salts might. */
function noneTells(table: Salts, { cells }: Pick<FurtherList, "cells">, alike: readonly number[]): string {
  const isUnsafe = cells.some(({ unsafeOn }) => unsafeOn?.some((salt) => alike.includes(salt)));
  const safe = isUnsafe ? ` that is safe on ${alike.length === 2 ? "both" : "all of them"}` : "";
  return `no test on our list${safe} ${tells(table, alike)}`;
}

/** Names of the tests with these cells, each once: the tests of one tube are one. */
export function titles(further: FurtherList, cells: readonly string[]): string[] {
  const at = cells.map((cell) => further.cells.findIndex(({ id }) => id === cell));
  return [...new Set(at.map((c) => further.tests[c].title.toLowerCase()))];
}

/** "NaOH white precipitate: P may be A or B; then the flame test settles it." */
export function wordOutcome(
  table: Salts,
  further: FurtherList,
  sample: string,
  { salts, after }: Pick<FurtherOutcome, "salts" | "after">,
): string {
  const means = meaning(table, sample, salts);
  if (!after) return `${means}.`;
  const { cells, alike } = onward(after);
  if (cells.length === 0) return `${means}. ${capital(noneTells(table, further, alike[0]))}.`;
  const [first, ...more] = titles(further, cells);
  const next = `Then ${first}${more.length > 0 ? ` and, if need be, ${list(more)}` : ""}`;
  if (alike.length === 0) return `${means}. ${next}: that settles it.`;
  return `${means}. ${next}; but ${noneTells(table, further, alike[0])}${alike.length > 1 ? ", nor some others" : ""}.`;
}

/** Where no test on the list helps: "No test on our list tells NH4Cl from NH4NO3, so T stays open." */
export const wordNone = (table: Salts, further: FurtherList, sample: string, { open }: Remaining): string =>
  `${capital(noneTells(table, further, open))}, so ${sample} stays open.`;
