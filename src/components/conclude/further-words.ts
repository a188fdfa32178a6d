/** What further tests would tell, in sentences; formulas in mhchem notation. */
import * as further from "#words/further-tests.ts";
import { list, OR } from "#words/language.ts";
import * as say from "#words/next-test.ts";
import type { PredictionTable, TableCell } from "../../engine/bench/prediction-table.ts";
import { type FurtherOutcome, onward, type Remaining } from "../../engine/deduction/further-tests.ts";
import type { NextTest, Outcome } from "../../engine/deduction/next-test.ts";
import { capital } from "../capital.ts";
import type { FurtherList } from "./further-list.ts";

type Salts = Pick<PredictionTable, "salts">;

/** Salts named before they are only counted. */
const NAMED = 4;

const formulas = ({ salts }: Salts, which: readonly number[]): string[] => which.map((salt) => salts[salt].formula);

/** "white precipitate", "at the border, slight white precipitate" */
export const wordSight = (
  { words }: Pick<TableCell, "words">,
  outcome: Outcome,
  { atBorder }: Pick<NextTest, "atBorder">,
): string => (atBorder.includes(outcome) ? say.atBorder(words[outcome.reading]) : words[outcome.reading]);

/** "P is ZnSO4", "P may be ZnSO4 or ZnCl2", "P is still one of 12 salts". */
export function meaning(table: Salts, sample: string, salts: readonly number[]): string {
  if (salts.length > NAMED) return say.stillOneOf(sample, salts.length);
  const named = formulas(table, salts);
  return named.length === 1 ? say.is(sample, named[0]) : say.mayBe(sample, named);
}

/** "(ask your teacher first)" behind a test that is unsafe on a salt the sample may still hold. */
export const askFirst = ({ unsafeOn }: Pick<NextTest, "unsafeOn">): string => (unsafeOn ? say.ASK_FIRST : "");

/** Before a test that is unsafe: "Ask your teacher before you begin it: P may be PbCl2, on which no class does this test." */
export function warnUnsafe(table: Salts, { sample, unsafeOn = [] }: Pick<NextTest, "sample" | "unsafeOn">): string {
  return say.warnUnsafe(
    sample,
    unsafeOn.length > NAMED ? say.oneOf(unsafeOn.length) : list(formulas(table, unsafeOn), OR),
  );
}

/** "no test on our list tells NH4Cl from NH4NO3"; one that is unsafe on some of the salts might. */
function noneTells(table: Salts, { cells }: Pick<FurtherList, "cells">, alike: readonly number[]): string {
  const isUnsafe = cells.some(({ unsafeOn }) => unsafeOn?.some((salt) => alike.includes(salt)));
  return further.noneTells(alike.length > NAMED ? alike.length : formulas(table, alike), isUnsafe);
}

/** Names of the tests with these cells, each once: the tests of one tube are one. */
export function titles(all: FurtherList, cells: readonly string[]): string[] {
  const at = cells.map((cell) => all.cells.findIndex(({ id }) => id === cell));
  return [...new Set(at.map((c) => further.within(all.tests[c].title)))];
}

/** "NaOH white precipitate: P may be A or B; then the flame test settles it." */
export function wordOutcome(
  table: Salts,
  all: FurtherList,
  sample: string,
  { salts, after }: Pick<FurtherOutcome, "salts" | "after">,
): string {
  const means = meaning(table, sample, salts);
  if (!after) return `${means}.`;
  const { cells, alike } = onward(after);
  if (cells.length === 0) return `${means}. ${capital(noneTells(table, all, alike[0]))}.`;
  const [first, ...more] = titles(all, cells);
  const next = `${means}. ${further.nextIs(first, more)}`;
  if (alike.length === 0) return further.thenSettled(next);
  return further.thenOpen(next, noneTells(table, all, alike[0]), alike.length > 1);
}

/** Where no test on the list helps: "No test on our list tells NH4Cl from NH4NO3, so T stays open." */
export const wordNone = (table: Salts, all: FurtherList, sample: string, { open }: Remaining): string =>
  further.staysOpen(capital(noneTells(table, all, open)), sample);
