/** How a precipitate may look that has been there for a while, besides what the constants have it be. */

import { SEEN_FIRST } from "../constants/kinetic-gates.ts";
import { LATER_LOOKS, type LaterLook } from "../constants/later-looks.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import type { Precipitate } from "../practical.ts";
import type { Growth } from "./read-precipitate.ts";
import type { TestTrace } from "./trace.ts";

/** A second look with the gate that gives it. */
export interface Later {
  gate: string;
  precipitate: Precipitate;
}

/** Of what was in plain sight before the test and still is: what has become of it since it fell. */
export function afterWaiting({ before, after, dry }: TestTrace): Later[] {
  if (dry) return [];
  const seen = (after?.solids ?? []).filter(
    ({ id, gramsPerDm3 }) =>
      gramsPerDm3 >= VISIBILITY.visible.value &&
      before?.solids.some((own) => own.id === id && own.gramsPerDm3 >= VISIBILITY.visible.value),
  );
  return seen.flatMap(({ id, gramsPerDm3, colour }) => {
    const amount = gramsPerDm3 >= VISIBILITY.plain.value ? "plain" : "slight";
    const later = LATER_LOOKS.filter(({ solid }) => solid === id);
    const settled = SEEN_FIRST.filter(({ solid }) => solid === id);
    return [
      ...later.map((row): Later => ({ gate: row.id, precipitate: { colour: row.colour, amount } })),
      ...settled.map((row): Later => ({ gate: row.id, precipitate: { colour, amount } })),
    ];
  });
}

/** The looks to which a new precipitate comes within its own test, where that warms it or lets it stand. */
export const withinTheTest = ({ waited }: TestTrace, grown: readonly Growth[]): LaterLook[] =>
  waited && grown.length > 0 ? LATER_LOOKS.filter(({ solid }) => grown.every(({ id }) => id === solid)) : [];
