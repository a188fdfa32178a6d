/** Every sight of the course's practicals: the engine's words for it are read back as that sight, with and without knowing the test. */
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { practicalPaths, readPage, readPracticalFile } from "../../../src/build/practical-files.ts";
import { predictor } from "../../../src/build/predictor.ts";
import { mayBe } from "../../../src/engine/bench/agreement.ts";
import { tabulate } from "../../../src/engine/bench/tabulate.ts";
import { cellsOf, type Observation } from "../../../src/engine/practical.ts";
import { askedOf } from "../../../src/engine/wording/asked-of.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";
import { readWords } from "../../../src/engine/wording/read-words.ts";

const ROOT = resolve(import.meta.dirname, "../../..");

describe.each(practicalPaths(ROOT))("%s", (path) => {
  const file = readPracticalFile(path, readPage(ROOT, path));
  if ("faults" in file) throw new Error(`${path} cannot be read`);
  const { table } = tabulate(file.practical, predictor, phrase);
  const cells = cellsOf(file.practical.parts);
  const places = table.cells.flatMap(({ readings, words }, c) =>
    readings.map((seen, r) => ({ seen, words: words[r], steps: cells[c].test.steps })),
  );

  test("is read back", () => {
    expect(places.length).toBeGreaterThan(5);
    for (const { seen, words } of places) {
      const back = readWords(words);
      expect(back.seen, words).toEqual(told(seen));
      expect(back.questions, words).toEqual([]);
    }
  });

  test("is read back where the test is known, and nothing is said not to be understood", () => {
    for (const { seen, words, steps } of places) {
      const back = readWords(words, askedOf(steps, seen.fate !== undefined && !seen.precipitate));
      expect(back.seen && mayBe(told(back.seen), told(seen)), `${words}: ${JSON.stringify(back.seen)}`).toBe(true);
      expect(back.questions.filter((question) => /^Not understood|is read as/.test(question))).toEqual([]);
    }
  });
});

const LIMEWATER = /^limewater/;

/** Clouded limewater is one sight for two gases, and its words name neither; a residue in one colour is not told hot from cold. */
function told(seen: Observation): Observation {
  const { gas, residue } = seen;
  return {
    ...seen,
    ...(gas && LIMEWATER.test(gas.evidence) && { gas: { ...gas, formula: "CO2" as const } }),
    ...(residue && residue.hot === residue.cold && { residue: { cold: residue.cold } }),
  };
}
