/**
 * The order of work of every practical of the course: proved by the engine, and proved once more without it. Where the sum of the work, the
 * burner's work or one tube's own time is as long as the order, that is the proof. Elsewhere a general-purpose solver (HiGHS) shows that
 * nothing a quarter of a minute shorter can be done, unless its programme would be too large to come to an end here.
 */
import load from "highs";
import { describe, expect, test } from "vitest";
import { practicalPaths, readPage, readPracticalFile } from "../../../../src/build/practical-files.ts";
import type { Means, TubeWork } from "../../../../src/engine/planning/order-of-work/bench-work.ts";
import { LOOKS, shortest } from "../../../../src/engine/planning/order-of-work/shortest.ts";
import { tubeWorkOf } from "../../../../src/engine/planning/order-of-work/tube-work.ts";
import { faultsOf } from "./faults.ts";
import { canEndBy, sizeOf } from "./work-by-milp.ts";

const ROOT = process.cwd();
const highs = await load();
const paths = practicalPaths(ROOT);
/** Whole numbers in a programme that HiGHS, built for the browser, has been seen to settle within a minute. */
const LARGEST = 700;

/** No order can be shorter than all work over all hands, the burner's over all burners, or one tube from its first turn to its last. */
function plainBound(tubes: readonly TubeWork[], { people, burners }: Means): number {
  const turns = tubes.flatMap((tube) => tube.turns);
  const sum = (of: typeof turns) => of.reduce((total, { work }) => total + work, 0);
  const own = tubes.map((tube) => tube.turns.reduce((total, { work, wait }) => total + work + wait, 0));
  return Math.max(
    Math.ceil(sum(turns) / people),
    Math.ceil(sum(turns.filter(({ burner }) => burner)) / burners),
    ...own,
  );
}

const means = (people: number): Means => ({ people, burners: 1, tubes: {}, partsInOrder: true, rinse: 2 });
const cases = paths.flatMap((path) => {
  const read = readPracticalFile(path, readPage(ROOT, path));
  if ("faults" in read) throw new Error(`${path} has faults`);
  const tubes = tubeWorkOf(read.practical);
  return [1, 2].map((people) => {
    const order = shortest(tubes, means(people), LOOKS.patient);
    const proof =
      order.end <= plainBound(tubes, means(people))
        ? "arithmetic"
        : sizeOf(tubes, means(people), order.end - 1) <= LARGEST
          ? "HiGHS"
          : "its own bound alone";
    return { path, people, tubes, order, proof };
  });
});

describe("the order of work", () => {
  test.each(cases)(
    "of $path for $people is the shortest, by $proof",
    ({ people, tubes, order: { bars, end, least }, proof }) => {
      expect(faultsOf(tubes, means(people), bars)).toEqual([]);
      expect(least).toBe(end);
      if (proof === "arithmetic") expect(end).toBe(plainBound(tubes, means(people)));
      if (proof === "HiGHS") expect(canEndBy(highs, tubes, means(people), end - 1)).toBe(false);
    },
    300_000,
  );

  test("is proved without the engine for at least every second case", () => {
    const proved = cases.filter(({ proof }) => proof !== "its own bound alone");
    expect(proved.length).toBeGreaterThanOrEqual(cases.length / 2);
  });
});
