/** What to practise next, from the marks that were lost. */
import { ADVICE, advice } from "#words/practise-result.ts";
import type { Reckoning } from "./reckoning.ts";

/** So many pieces of advice: more is read by nobody. */
const TOLD = 3;

export const wordNext = ({ lost }: Reckoning): string[] =>
  lost.slice(0, TOLD).map(({ for: what, times }) => advice(ADVICE[what], times));
