/** An author's observations in the terms of a prediction table, and back. */
import { mayBe, sameSight } from "../engine/bench/agreement.ts";
import type { PredictionTable, TableCell, TableRecord } from "../engine/bench/prediction-table.ts";
import { refuseMore, type Words } from "../engine/bench/tabulate.ts";
import type { Observation, PracticalRecord } from "../engine/practical.ts";

/**
 * Finds the reading for each recorded observation. One that names no reading exactly is added to the cell as a reading of its own, which
 * agrees with every reading it may have been. The table is changed in place. Throws TooManyReadings where it has no room.
 */
export function recordInTable(table: PredictionTable, record: PracticalRecord, words: Words): TableRecord {
  const out: TableRecord = {};
  for (const [sample, row] of Object.entries(record)) {
    out[sample] = {};
    for (const [id, seen] of Object.entries(row)) {
      const cell = table.cells.find((each) => each.id === id);
      if (cell) out[sample][id] = readingFor(cell, seen, words);
    }
  }
  return out;
}

function readingFor(cell: TableCell, seen: Observation, words: Words): number {
  const exact = cell.readings.findIndex((reading) => JSON.stringify(reading) === JSON.stringify(seen));
  if (exact >= 0) return exact;
  const possible = cell.readings.flatMap((reading, index) => (mayBe(seen, reading) ? [index] : []));
  const same = possible.filter((index) => sameSight(seen, cell.readings[index]));
  const mask = possible.reduce((all, index) => all | (1 << index), 0);
  // Another name for one reading only: nothing is lost by that reading's own name, unless that is a name for more.
  if (possible.length === 1 && same.length === 1 && cell.agrees[possible[0]] === mask) return possible[0];
  refuseMore(cell);
  cell.readings.push(seen);
  const said = words(seen, cell.dry ? "solid" : "precipitate");
  cell.words.push(possible.length > 1 ? `${said} (nothing else noted)` : said);
  const own = cell.readings.length - 1;
  cell.agrees.push(mask | (1 << own));
  return own;
}
