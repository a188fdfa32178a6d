/** The unknowns behind one number: what each of their tubes shows at each test. */
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import { drawnSet } from "../../engine/deduction/drawn-set.ts";
import type { Colour, Observation } from "../../engine/practical.ts";
import type { Practice } from "./practice-table.ts";

export interface Unknown {
  sample: string;
  /** Index of its prediction set. */
  set: number;
  /** Index into the table's salts. */
  salt: number;
  /** Its colour in the bottle, as a solution and as a solid. */
  solution?: Colour;
  solid?: Colour;
  /** By cell: undefined where it is not done on this sample, or nothing is predicted. */
  seen: (Seen | undefined)[];
}

/** What one tube shows at one test. */
export interface Seen {
  /** Index of the cell's reading that is shown. */
  reading: number;
  shown: Observation;
  /** All that may be seen there, what is shown first. */
  accepted: Observation[];
  /** Of the liquid at the end. */
  liquid?: Colour;
}

export function unknownsOf(practice: Practice, seed: number): Unknown[] {
  const { table, draws, colours, solutions, solids, liquids } = practice;
  const salts = drawnSet(draws, seed);
  return table.samples.map(({ label, set }, s): Unknown => {
    const row = table.sets[set].salts.indexOf(salts[s]);
    const named = (index: number | undefined) => (index === undefined ? undefined : colours[index]);
    const solution = named(solutions[set][row]);
    const solid = named(solids[set][row]);
    return {
      sample: label,
      set,
      salt: salts[s],
      ...(solution && { solution }),
      ...(solid && { solid }),
      seen: table.cells.map((cell, c) => {
        const reading = table.sets[set].main[row][c];
        if (reading < 0 || !cell.samples.includes(label)) return undefined;
        const mask = table.sets[set].accepts[row][c];
        const others = cell.readings.filter((_, r) => r !== reading && mask & (1 << r));
        const liquid = named(liquids[set][row][c]);
        return {
          reading,
          shown: cell.readings[reading],
          accepted: [cell.readings[reading], ...others],
          ...(liquid && { liquid }),
        };
      }),
    };
  });
}

/** The record that somebody would write who sees everything. */
export const trueRecord = ({ cells }: PredictionTable, unknowns: readonly Unknown[]): TableRecord =>
  Object.fromEntries(
    unknowns.map(({ sample, seen }) => [
      sample,
      Object.fromEntries(seen.flatMap((one, c) => (one ? [[cells[c].id, one.reading]] : []))),
    ]),
  );
