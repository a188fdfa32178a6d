/** An author's observations in the terms of a prediction table, and back. */

import type { PracticalRecord } from "../practical.ts";
import type { PredictionTable, TableRecord } from "./prediction-table.ts";
import { readingFor } from "./reading-for.ts";
import type { Words } from "./tabulate.ts";

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
      if (cell) out[sample][id] = readingFor(cell, seen, words(seen, cell.dry ? "solid" : "precipitate"));
    }
  }
  return out;
}
