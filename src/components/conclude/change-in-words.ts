/** What a change of the record does to the conclusion, in half a sentence to be spoken. */
import { TOO_MUCH } from "#words/conclude.ts";
import * as say from "#words/what-changed.ts";
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { aloud } from "./aloud.ts";
import { findingOf, type Recorded } from "./finding.ts";

/**
 * What is concluded of the first sample of which something else is concluded now, one that fits nothing before others, and the letters of
 * the others.
 *
 * @param of what is recorded now
 * @param before the record it is held against
 * @returns by name where there is one, else formulas in mhchem notation; without a full stop: "R holds zinc sulfate; S and T change too"
 */
export function changeInWords(of: Recorded, before: TableRecord): string {
  const found = findingOf(of);
  if (!found) return halfSentence(TOO_MUCH);
  const now = found.headlines;
  const then = findingOf({ ...of, record: before })?.headlines ?? [];
  // A sample that fits nothing comes first: the others only wait for it.
  const { assignments } = found.conclusion;
  const isStuck = (s: number) => assignments === 0 && found.candidates[s].every(({ clashes }) => clashes.length > 0);
  const [first, ...others] = [...now.keys()]
    .filter((s) => now[s] !== then[s])
    .sort((a, b) => Number(isStuck(b)) - Number(isStuck(a)));
  if (first === undefined) return assignments > 0 ? say.STAYS : say.STILL_FITS_NOTHING;
  const letters = others.map((s) => of.table.samples[s].label);
  const wait = isStuck(first) && !others.some(isStuck);
  return halfSentence(aloud(now[first])) + (letters.length > 0 ? say.others(letters, wait) : "");
}

const halfSentence = (sentence: string) => say.within(sentence).replace(/\.$/, "");
