/** Marks a walkthrough as practised today. */
import { NOT_KEPT } from "#words/practised.ts";
import { dayOf, mark, read } from "../progress.ts";
import { practisedWords } from "./practised-words.ts";

/** @returns what to tell the reader */
export function markedNow(practical: string): string {
  const on = dayOf(new Date());
  const before = read(practical);
  const last = before?.occasions.at(-1);
  // Two taps on one day are one occasion.
  if (before && last?.on === on && last.how === "walkthrough") return practisedWords(before);
  const kept = mark(practical, { on, how: "walkthrough" });
  const now = read(practical);
  return kept && now ? practisedWords(now) : NOT_KEPT;
}
