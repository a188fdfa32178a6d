/** A record read from somebody's own words, in the terms of a table of predictions, so that it can be concluded from. */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import { readingFor } from "../bench/reading-for.ts";
import { hasRoom } from "../bench/too-many-readings.ts";
import type { Observation } from "../practical.ts";
import { phrase } from "../wording/phrase.ts";

/** Observations by sample and cell; what was not understood is absent and counts as not done. */
export type OwnObservations = Readonly<Record<string, Readonly<Record<string, Observation>>>>;

/**
 * The table with room for what was written, and the record in its terms. The table given is not changed. An observation for which a cell has
 * no room is left out, as not done.
 */
export function ownRecord(
  table: PredictionTable,
  own: OwnObservations,
): { table: PredictionTable; record: TableRecord } {
  const cells = table.cells.map((cell) => ({
    ...cell,
    readings: [...cell.readings],
    words: [...cell.words],
    agrees: [...cell.agrees],
  }));
  const record: TableRecord = {};
  for (const [sample, row] of Object.entries(own)) {
    record[sample] = {};
    for (const cell of cells) {
      const seen = row[cell.id];
      if (seen && hasRoom(cell))
        record[sample][cell.id] = readingFor(cell, seen, phrase(seen, cell.dry ? "solid" : "precipitate"));
    }
  }
  return { table: { ...table, cells }, record };
}
