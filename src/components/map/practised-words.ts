/** What was practised, in words for a list. */
import type { Practised } from "../progress.ts";

const times = (count: number): string => (count === 1 ? "once" : count === 2 ? "twice" : `${count} times`);

/** "You have practised this twice, last on 30 November 2026; at best 9 of 12 marks." */
export function practisedWords({ occasions }: Practised): string {
  const last = occasions[occasions.length - 1];
  const best = occasions
    .flatMap(({ marks }) => (marks && marks.of > 0 ? [marks] : []))
    .sort((a, b) => b.earned / b.of - a.earned / a.of)[0];
  const marks = best ? `; at best ${best.earned} of ${best.of} marks` : "";
  return `You have practised this ${times(occasions.length)}, last on ${dayWords(last.on)}${marks}.`;
}

/** "2026-11-30" as "30 November 2026". */
function dayWords(day: string): string {
  const [year, month, date] = day.split("-").map(Number);
  const moment = new Date(year, month - 1, date);
  return moment.toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" });
}
