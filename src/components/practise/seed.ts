/** The number of a draw of unknowns, as it is typed or stands in an address (`?seed=1234`). */
import * as say from "#words/practise.ts";
import { GREATEST_SEED, isSeed } from "../../engine/deduction/drawn-set.ts";

const QUOTED = 20;

/** @returns the number, or what is wrong with it in a sentence */
export function readSeed(text: string): number | string {
  const typed = text.trim();
  const seed = /^\d{1,6}$/.test(typed) ? Number(typed) : Number.NaN;
  if (isSeed(seed)) return seed;
  const shown = typed.length > QUOTED ? `${typed.slice(0, QUOTED)}…` : typed;
  return say.expected(typed === "" ? say.NO_NUMBER : say.noNumberOfASet(shown), GREATEST_SEED);
}

/** One to begin with. Four figures are easily read out. */
export const newSeed = (chance: () => number): number => 1000 + Math.floor(chance() * 9000);
