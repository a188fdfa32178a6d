/** What was practised, in words for a list. */
import { LANGUAGE } from "#words/language.ts";
import { practised } from "#words/practised.ts";
import type { Practised } from "../progress.ts";

/** "You have practised this twice, last on 30 November 2026; at best 9 of 12 marks." */
export function practisedWords({ occasions }: Practised): string {
  const last = occasions[occasions.length - 1];
  const best = occasions
    .flatMap(({ marks }) => (marks && marks.of > 0 ? [marks] : []))
    .sort((a, b) => b.earned / b.of - a.earned / a.of)[0];
  return practised(occasions.length, dayWords(last.on), best);
}

/** "2026-11-30" as "30 November 2026", in German "30. November 2026". */
function dayWords(day: string): string {
  const [year, month, date] = day.split("-").map(Number);
  const moment = new Date(year, month - 1, date);
  return moment.toLocaleDateString(LANGUAGE, { day: "numeric", month: "long", year: "numeric" });
}
