/** The sheets that are printed for one practical, in the order in which they are needed. */
import { SHEETS as WORDS } from "#words/sheets.ts";

export type SheetSlug = keyof typeof WORDS;

const SLUGS: readonly SheetSlug[] = ["bench-card", "labels", "record", "marks"];

export const SHEETS = SLUGS.map((slug) => ({ slug, ...WORDS[slug] }));
