/** An author's observation keeps what it says when the table has no reading of just that name. */
import { expect, test } from "vitest";
import type { PredictionTable } from "../../../src/engine/bench/prediction-table.ts";
import { recordInTable } from "../../../src/engine/bench/record-in-table.ts";
import type { Colour, Observation } from "../../../src/engine/practical.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";

const precipitate = (colour: Colour): Observation => ({ precipitate: { colour, amount: "plain" } });

const tableWith = (readings: Observation[], agrees: number[]) =>
  ({
    cells: [{ id: "a", samples: ["P"], readings, words: readings.map((one) => phrase(one)), agrees, comesOff: [] }],
  }) as unknown as PredictionTable;

// Colours as the boards' synonyms have them (tests/reference/qualitative-tables.json): cream is also called pale yellow.
test("yellow is not taken for a pale yellow that may have been cream", () => {
  const table = tableWith([precipitate("pale yellow"), precipitate("cream")], [0b11, 0b11]);
  const record = recordInTable(table, { P: { a: precipitate("yellow") } }, phrase);
  expect(record).toEqual({ P: { a: 2 } });
  expect(table.cells[0].readings[2]).toEqual(precipitate("yellow"));
  expect(table.cells[0].agrees[2]).toBe(0b101);
});

test("another name for one reading alone is that reading", () => {
  const table = tableWith([precipitate("pale yellow"), precipitate("white")], [0b01, 0b10]);
  expect(recordInTable(table, { P: { a: precipitate("yellow") } }, phrase)).toEqual({ P: { a: 0 } });
  expect(table.cells[0].readings).toHaveLength(2);
});
