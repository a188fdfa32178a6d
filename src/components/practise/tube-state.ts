/** What stands in a tube before and after each test, for the drawing and its words. */
import type { Amount, Colour } from "../../engine/practical.ts";
import type { Practice, PracticeTest } from "./practice-table.ts";
import type { Unknown } from "./unknowns.ts";

export interface TubeState {
  /** Liquid, cm3. */
  cm3: number;
  liquid?: Colour;
  solid?: { colour?: Colour; amount: Amount | "rest"; dry: boolean };
}

const EMPTY: TubeState = { cm3: 0 };

/** The tube of one sample when the test at `c` begins. A fresh tube holds the sample alone. */
export function tubeBefore(practice: Practice, tests: readonly PracticeTest[], of: Unknown, c: number): TubeState {
  const { cells, samples } = practice.table;
  if (!samples.some(({ label }) => label === of.sample) || !cells[c].samples.includes(of.sample)) return EMPTY;
  if (!tests[c].fresh) return tubeAfter(practice, tests, of, c - 1);
  const dry = cells[c].dry === true;
  if (dry) return { cm3: 0, solid: { ...(of.solid && { colour: of.solid }), amount: "plain", dry: true } };
  return { cm3: Math.min(1, practice.cm3[c]) || 1, ...(of.solution && { liquid: of.solution }) };
}

export function tubeAfter(practice: Practice, tests: readonly PracticeTest[], of: Unknown, c: number): TubeState {
  const before = tubeBefore(practice, tests, of, c);
  const seen = of.seen[c];
  const cm3 = practice.cm3[c];
  if (!seen) return { ...before, cm3 };
  const { precipitate, fate, residue, flame } = seen.shown;
  if (flame !== undefined) return before;
  const liquid = cm3 > 0 ? (seen.shown.solution ?? seen.liquid ?? before.liquid) : undefined;
  let solid = before.solid && { ...before.solid, dry: before.solid.dry && cm3 === 0 };
  if (precipitate) solid = { colour: precipitate.colour, amount: precipitate.amount, dry: false };
  if (fate === "partly dissolves" && solid) solid = { ...solid, amount: "rest" };
  if (fate === "dissolves") solid = undefined;
  if (residue === false) solid = undefined;
  else if (residue?.cold) solid = { colour: residue.cold, amount: "plain", dry: true };
  return { cm3, ...(liquid && { liquid }), ...(solid && { solid }) };
}
