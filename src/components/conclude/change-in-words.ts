/** What a change of the record does to the conclusion, in half a sentence to be spoken. */
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { list } from "../sentence.ts";
import { aloud } from "./aloud.ts";
import { findingOf, type Recorded, TOO_MUCH } from "./finding.ts";

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
  if (!found) return TOO_MUCH.replace(/\.$/, "").replace(/^The/, "the");
  const now = found.headlines;
  const then = findingOf({ ...of, record: before })?.headlines ?? [];
  // A sample that fits nothing comes first: the others only wait for it.
  const isStuck = (s: number) => now[s].startsWith("No ");
  const [first, ...others] = [...now.keys()]
    .filter((s) => now[s] !== then[s])
    .sort((a, b) => Number(isStuck(b)) - Number(isStuck(a)));
  if (first === undefined) {
    return found.conclusion.assignments > 0
      ? "the conclusion stays as it was"
      : "the record still fits no salts: Conclude says what to repeat first";
  }
  const letters = others.map((s) => of.table.samples[s].label);
  const wait = isStuck(first) && !others.some(isStuck);
  const does = wait ? ["waits", "wait"] : ["changes too", "change too"];
  const too = letters.length > 0 ? `; ${list(letters)} ${does[Math.min(letters.length, 2) - 1]}` : "";
  return `${aloud(now[first])
    .replace(/^(?:By|No) /, (word) => word.toLowerCase())
    .replace(/\.$/, "")}${too}`;
}
