/** Reads the outside data of tests/reference. */
import { readFileSync } from "node:fs";
import { join } from "node:path";

const FOLDER = join(import.meta.dirname, "..", "reference");

/** One file of the folder, parsed. */
export const reference = <T>(file: string): T => JSON.parse(readFileSync(join(FOLDER, file), "utf8")) as T;

const reasons = reference<Record<string, string>>("known-differences.json");

/** The recorded reason for a difference, if any. */
export const reasonFor = (id: string): string | undefined => reasons[id];
