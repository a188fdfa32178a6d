/** What a change of the record does to the conclusion, in half a sentence to be spoken. */
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { list } from "../sentence.ts";
import { findingOf, type Recorded, TOO_MUCH } from "./finding.ts";

/**
 * What is concluded of the first sample of which something else is concluded now, and the letters of the others.
 *
 * @param of what is recorded now
 * @param before the record it is held against
 * @returns formulas in mhchem notation, without a full stop: "R holds zinc sulfate, ZnSO4: Zn^2+ and SO4^2-; S and T change too"
 */
export function changeInWords(of: Recorded, before: TableRecord): string {
  const now = findingOf(of)?.headlines;
  if (!now) return TOO_MUCH.replace(/\.$/, "").replace(/^The/, "the");
  const then = findingOf({ ...of, record: before })?.headlines ?? [];
  const [first, ...others] = [...now.keys()].filter((s) => now[s] !== then[s]);
  if (first === undefined) return "the conclusion stays as it was";
  const letters = others.map((s) => of.table.samples[s].label);
  const too = letters.length > 0 ? `; ${list(letters)} ${letters.length > 1 ? "change" : "changes"} too` : "";
  return `${now[first].replace(/^(?:By|No) /, (word) => word.toLowerCase()).replace(/\.$/, "")}${too}`;
}
