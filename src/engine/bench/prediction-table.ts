/**
 * The compact form of all predictions of a practical, made at build and read by deduction in the page: every allowed salt against
 * every line of the record. JSON only, no class, no function, so that it can stand in a page.
 */
import type { GivenOff, Observation, Statement } from "../practical.ts";

/** Something a sample may hold: a salt, a double salt or a mixture of salts. */
export interface SaltEntry {
  /** mhchem, without water of crystallisation: "ZnSO4"; the salts of a mixture joined by " + ". */
  formula: string;
  cations: string[];
  anions: string[];
}

/** One line of the record and all that could be seen there. */
export interface TableCell {
  id: string;
  /** Letters of the samples it is done on. */
  samples: string[];
  /** The test begins with a dry sample: its solid is "the solid", not a precipitate. */
  dry?: true;
  /** Salts (indices) that the test is unsafe on: never given out where it is done. Absent where there are none. */
  unsafeOn?: number[];
  /** Different observations some salt would show, then some general ones no salt shows. */
  readings: Observation[];
  /** Each reading in words, same order. */
  words: string[];
  /**
   * agrees[r]: bit mask over readings: those that a person who recorded reading r may have had before them (colour synonyms; a faint
   * precipitate and a plain one; "no visible change" over a precipitate that stays). Bit r itself is always set.
   */
  agrees: number[];
  /** Gases some salt gives off here in an amount that can be shown or felt, with those salts (indices), tested for or not. */
  comesOff: { gas: GivenOff; salts: number[] }[];
}

/** Predictions for samples given in the same way (same form, same concentration). */
export interface PredictionSet {
  /** Indices into `salts` of the salts such a sample may hold. */
  salts: number[];
  /** accepts[i][c]: bit mask over cell c's readings that salt salts[i] may show; 0 where the cell is not done or not predicted. */
  accepts: number[][];
  /** main[i][c]: index of the likeliest of those readings, -1 where there is none. */
  main: number[][];
  /**
   * [i, c, mask]: which of accepts[i][c] salt salts[i] shows only when the sample or a reagent is made up to another strength than usual, or
   * a constant is a little off: the readings of a borderline prediction besides its own.
   */
  atBorder: [row: number, cell: number, mask: number][];
  /** facts[i][c]: index into `facts`, the engine's number behind the main reading, or -1. */
  facts: number[][];
  /** Salts that cannot be such a sample, with the computed reason. */
  cannotBe: { salt: number; reason: string }[];
}

export interface PredictionTable {
  salts: SaltEntry[];
  cells: TableCell[];
  /** Short sentences such as "7.8 g/dm3 of BaSO4". */
  facts: string[];
  sets: PredictionSet[];
  /** Each sample with its set. */
  samples: { label: string; set: number }[];
  paper: Statement;
}

/**
 * A record in the table's terms: reading index for each sample and cell, or -1 for something that is none of the cell's readings
 * (`SOMETHING_ELSE` of deduction); absent = not done.
 */
export type TableRecord = Record<string, Record<string, number>>;
