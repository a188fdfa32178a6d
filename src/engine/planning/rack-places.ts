/** Where each tube stands, so that the hand finds them in the order of use: rows from the front, each from left to right. */
import type { Rinsed } from "./order-of-work/bench-work.ts";
import type { OrderOfWork, Work } from "./order-of-work/order-of-work.ts";

/** A tube of a plan, as far as its place is concerned. */
export interface Racked {
  label: string;
  sample: string;
  part: string;
  size: { id: string };
  holds?: "limewater";
}

/** No more of a tube than a page has to carry. */
export const rackedOf = ({ label, sample, part, size, holds }: Racked): Racked => ({
  label,
  sample,
  part,
  size: { id: size.id },
  ...(holds && { holds }),
});

export type RowKind = "test-tubes" | "boiling tubes" | "hard-glass tubes" | "limewater tubes";

/** One row of a rack: tubes of one kind, for they share the width of a hole. */
export interface RackRow {
  /** "test-tubes", "boiling tubes", "hard-glass tubes", "limewater tubes". */
  kind: RowKind;
  /** From left to right. Of one tube the labels it carries one after the other: more than one when it is rinsed and used again. */
  places: string[][];
}

/** Holes in a row of a common school rack: common practice, no source. */
const HOLES = 6;

const sized =
  (start: string) =>
  ({ size, holds }: Racked): boolean =>
    size.id.startsWith(start) && holds === undefined;

const KINDS: readonly { kind: RowKind; of: (tube: Racked) => boolean; rinsed?: Rinsed }[] = [
  { kind: "test-tubes", of: sized("test-tube"), rinsed: "test-tube" },
  { kind: "boiling tubes", of: sized("boiling-tube"), rinsed: "boiling tube" },
  { kind: "hard-glass tubes", of: sized("hard-glass") },
  { kind: "limewater tubes", of: ({ holds }) => holds === "limewater" },
];

/** A tube of glass with the labels it carries in turn. */
interface Standing {
  labels: string[];
  /** Minute from which it can be rinsed for another. */
  free: number;
}

/**
 * Rows of at most six tubes: the kind that is first in use in front, and in it the tubes in the order in which they are begun.
 *
 * @param limits how many tubes of a kind there are, as the order of work was made for; absent when there are enough
 */
export function rackRows(
  tubes: readonly Racked[],
  { work }: Pick<OrderOfWork, "work">,
  limits: Partial<Record<Rinsed, number>> = {},
): RackRow[] {
  const workOn = (tube: Racked) => (one: Work) => one.sample === tube.sample && one.part === tube.part;
  const uses = tubes.map((tube, place) => {
    const last = work.findLast(workOn(tube));
    return { tube, place, at: work.findIndex(workOn(tube)), begun: work.find(workOn(tube))?.start ?? 0, last };
  });
  // Tubes begun together keep the order of the plan: a filtrate stands beside what it came from.
  uses.sort((a, b) => a.at - b.at || a.place - b.place);
  const rows = KINDS.flatMap(({ kind, of, rinsed }) => {
    const most = (rinsed && limits[rinsed]) ?? Number.POSITIVE_INFINITY;
    const standing: Standing[] = [];
    const mine = uses.filter(({ tube }) => of(tube));
    const first = mine.at(0);
    for (const { tube, begun, last } of mine) {
      const free = last ? last.start + last.minutes : begun;
      const used = standing.length < most ? undefined : standing.filter((one) => one.free <= begun)[0];
      if (used) {
        used.labels.push(tube.label);
        used.free = free;
      } else standing.push({ labels: [tube.label], free });
    }
    const places = standing.map(({ labels }) => labels);
    return Array.from({ length: Math.ceil(places.length / HOLES) }, (_, row) => ({
      first: first?.at ?? 0,
      row: { kind, places: places.slice(row * HOLES, (row + 1) * HOLES) },
    }));
  });
  return rows.sort((a, b) => a.first - b.first).map(({ row }) => row);
}
