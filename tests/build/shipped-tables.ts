/** The tables of predictions of the shipped practicals, each with the record its author wrote. */
import { resolve } from "node:path";
import { practicalPaths, readPage, readPracticalFile } from "../../src/build/practical-files.ts";
import { predictor } from "../../src/build/predictor.ts";
import type { PredictionTable, TableRecord } from "../../src/engine/bench/prediction-table.ts";
import { recordInTable } from "../../src/engine/bench/record-in-table.ts";
import { tabulate } from "../../src/engine/bench/tabulate.ts";
import type { Practical } from "../../src/engine/practical.ts";
import { phrase } from "../../src/engine/wording/phrase.ts";

const ROOT = resolve(import.meta.dirname, "../..");

export interface Shipped {
  name: string;
  practical: Practical;
  table: PredictionTable;
  record: TableRecord;
}

/** @param names of those wanted; all when absent */
export const shippedTables = (names?: readonly string[]): Shipped[] =>
  practicalPaths(ROOT).flatMap((path) => {
    const name = path.replace(/^.*\/|\.mdx$/g, "");
    if (names && !names.includes(name)) return [];
    const read = readPracticalFile(path, readPage(ROOT, path));
    if (!("practical" in read)) throw new Error(`${path} cannot be read`);
    const { practical } = read;
    const { table } = tabulate(practical, predictor, phrase);
    return { name, practical, table, record: recordInTable(table, practical.record, phrase) };
  });
