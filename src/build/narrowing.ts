/** A small worked example: how the ions a paper offers become fewer, test by test, for a sample whose salt the author names. */
import { contentNamed } from "../engine/bench/contents.ts";
import { tabulate } from "../engine/bench/tabulate.ts";
import { STANDARD_TESTS, type StandardTest } from "../engine/constants/standard-tests.ts";
import { deduce } from "../engine/deduction/deduce.ts";
import { standardPart } from "../engine/practical/standard-parts.ts";
import { cellsOf, type Practical } from "../engine/practical.ts";
import { phrase } from "../engine/wording/phrase.ts";
import { TRIED_AT } from "./ions/tried.ts";
import { predictor } from "./predictor.ts";

export interface NarrowingStep {
  test: StandardTest;
  /** What is seen, one for each stage of the test. */
  seen: string[];
  /** Ions still possible when this has been recorded. */
  cations: string[];
  anions: string[];
}

/** The standard test of this name. @throws RangeError with the names there are */
export function standardTest(id: string): StandardTest {
  const test = STANDARD_TESTS.find((one) => one.id === id);
  if (test) return test;
  throw new RangeError(
    `found the standard test "${id}", expected one of ${STANDARD_TESTS.map((one) => one.id).join(", ")}`,
  );
}

/** Letters of the parts, in the order of the tests. */
const LETTERS = "abcdefghij";

/**
 * @param salt what the sample holds, mhchem
 * @param tests names of standard tests, in the order in which they are done
 * @throws RangeError for a test or salt that is none
 */
export function narrowing(
  salt: string,
  offered: Pick<Practical["paper"], "cations" | "anions">,
  tests: readonly string[],
): NarrowingStep[] {
  const wanted = contentNamed(salt);
  if (!wanted) throw new RangeError(`found the salt "${salt}", expected a salt of known ions`);
  const sample = { label: "X", given: "solution", concentration: { molPerDm3: TRIED_AT }, salt } as const;
  const paper: Practical["paper"] = { ...offered, share: [], differ: [], same: [], contains: [] };
  const parts = tests.map((id, n) => standardPart(standardTest(id), LETTERS[n], "solution"));
  const { table } = tabulate({ samples: [sample], paper, parts }, predictor, phrase);
  const [set] = table.sets;
  const row = set.salts.findIndex((index) => table.salts[index].formula === wanted.formula);
  if (row < 0) throw new RangeError(`found the salt "${salt}", expected one that the paper offers and that dissolves`);
  const cells = cellsOf(parts);
  const record: Record<string, Record<string, number>> = { X: {} };
  return tests.map((id, n) => {
    const mine = cells.flatMap(({ id: cell, part }, c) => (part === parts[n] ? [{ cell, c }] : []));
    for (const { cell, c } of mine) record.X[cell] = set.main[row][c];
    const [{ salts }] = deduce(table, record).samples;
    const left = salts.map((index) => table.salts[index]);
    return {
      test: standardTest(id),
      seen: mine.map(({ c }) => table.cells[c].words[set.main[row][c]]),
      cations: offered.cations.filter((ion) => left.some(({ cations }) => cations.includes(ion))),
      anions: offered.anions.filter((ion) => left.some(({ anions }) => anions.includes(ion))),
    };
  });
}

/**
 * What a salt shows in one stage of a standard test, in the words of a record.
 * @param stage from 1
 * @throws RangeError for a salt, test or stage that is none
 */
export function shownBy(salt: string, id: string, stage: number): string {
  const content = contentNamed(salt);
  if (!content) throw new RangeError(`found the salt "${salt}", expected a salt of known ions`);
  const part = standardPart(standardTest(id), "a", "solution");
  const seen = [...predictor.predict({ ions: content.ions, molPerDm3: TRIED_AT }, [part]).values()][stage - 1];
  const reading = seen?.readings[0];
  if (reading) return phrase(reading);
  throw new RangeError(
    `found stage ${stage} of "${id}", expected one of its ${part.tests.length} that the engine predicts`,
  );
}
