/** Where each tube stands, so that the hand finds them in the order of use: rows from the front, each from left to right. */
import type { PlannedTube } from "./bench-plan.ts";
import type { OrderOfWork } from "./order-of-work/order-of-work.ts";

/** One row of a rack: tubes of one kind, for they share the width of a hole. */
export interface RackRow {
  /** "test-tubes", "boiling tubes", "hard-glass tubes". */
  kind: string;
  /** Labels from left to right. */
  labels: string[];
}

/** Holes in a row of a common school rack: common practice, no source. */
const HOLES = 6;

const KINDS = [
  { kind: "test-tubes", start: "test-tube" },
  { kind: "boiling tubes", start: "boiling-tube" },
  { kind: "hard-glass tubes", start: "hard-glass" },
];

/** Rows of at most six tubes: the kind that is first in use in front, and in it the tubes in the order in which they are begun. */
export function rackRows(tubes: readonly PlannedTube[], { work }: Pick<OrderOfWork, "work">): RackRow[] {
  const begun = (tube: PlannedTube) => {
    const at = work.findIndex(({ sample, part }) => sample === tube.sample && part === tube.part);
    return at < 0 ? work.length : at;
  };
  // Tubes begun together keep the order of the plan: a filtrate stands beside what it came from.
  const inOrder = tubes
    .map((tube, place) => ({ tube, place }))
    .sort((a, b) => begun(a.tube) - begun(b.tube) || a.place - b.place);
  const rows = KINDS.flatMap(({ kind, start }) => {
    const mine = inOrder.filter(({ tube }) => tube.size.id.startsWith(start));
    if (mine.length === 0) return [];
    const labels = mine.map(({ tube }) => tube.label);
    const chunks = Array.from({ length: Math.ceil(labels.length / HOLES) }, (_, row) =>
      labels.slice(row * HOLES, (row + 1) * HOLES),
    );
    return chunks.map((chunk) => ({ first: begun(mine[0].tube), row: { kind, labels: chunk } }));
  });
  return rows.sort((a, b) => a.first - b.first).map(({ row }) => row);
}
