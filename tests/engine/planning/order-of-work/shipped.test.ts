/**
 * The order of work of every practical of the course: proved by the engine, and proved once more without it. Where the sum of the work, the
 * burner's work or one tube's own time is as long as the order, that is the proof. Elsewhere a general-purpose solver, HiGHS, shows that
 * nothing a quarter of a minute shorter can be done.
 */
import load from "highs";
import { describe, expect, test } from "vitest";
import { practicalPaths, readPage, readPracticalFile } from "../../../../src/build/practical-files.ts";
import type { Means, TubeWork } from "../../../../src/engine/planning/order-of-work/bench-work.ts";
import { LOOKS, shortest } from "../../../../src/engine/planning/order-of-work/shortest.ts";
import { tubeWorkOf } from "../../../../src/engine/planning/order-of-work/tube-work.ts";
import { faultsOf } from "./faults.ts";
import { allows, canEndBy, FOR_A_PROOF } from "./work-by-milp.ts";

const ROOT = process.cwd();
const highs = await load();
const paths = practicalPaths(ROOT);
/** Rinsing that no order saves: of every kind, all that are taken beyond those there are. */
function rinsing(tubes: readonly TubeWork[], { tubes: there, rinse }: Means): number {
  const dirty = (["test-tube", "boiling tube"] as const).map((kind) => {
    const taken = tubes.reduce((sum, { tubes: glass }) => sum + (glass?.kind === kind ? glass.count : 0), 0);
    return Math.max(0, taken - (there[kind] ?? taken));
  });
  return rinse * (dirty[0] + dirty[1]);
}

/**
 * No order can be shorter than all work and rinsing over all hands, the burner's work over all burners, or one tube from its first turn to
 * its last.
 */
function plainBound(tubes: readonly TubeWork[], means: Means): number {
  const { people, burners } = means;
  const turns = tubes.flatMap((tube) => tube.turns);
  const sum = (of: typeof turns) => of.reduce((total, { work }) => total + work, 0);
  const own = tubes.map((tube) => tube.turns.reduce((total, { work, wait }) => total + work + wait, 0));
  return Math.max(
    Math.ceil((sum(turns) + rinsing(tubes, means)) / people),
    Math.ceil(sum(turns.filter(({ burner }) => burner)) / burners),
    ...own,
  );
}

/** Tubes enough, and a tray of six and two, so that most practicals have to rinse. */
const TRAYS: Means["tubes"][] = [{}, { "test-tube": 6, "boiling tube": 2 }];
const BENCHES = TRAYS.flatMap((tubes) =>
  [1, 2].map((people): Means => ({ people, burners: 1, tubes, partsInOrder: true, rinse: 2 })),
);
const cases = paths.flatMap((path) => {
  const read = readPracticalFile(path, readPage(ROOT, path));
  if ("faults" in read) throw new Error(`${path} has faults`);
  const tubes = tubeWorkOf(read.practical);
  return BENCHES.map((means) => {
    const order = shortest(tubes, means, LOOKS.patient);
    const proof = order.end <= plainBound(tubes, means) ? "arithmetic" : "HiGHS";
    const tray = Object.keys(means.tubes).length > 0 ? "a tray of tubes" : "tubes enough";
    return { path, people: means.people, tray, means, tubes, order, proof };
  });
});

describe("the order of work", () => {
  test.each(cases)(
    "of $path for $people with $tray is the shortest, by $proof",
    ({ means, tubes, order, proof }) => {
      const { bars, end, least } = order;
      expect(faultsOf(tubes, means, bars)).toEqual([]);
      expect(least).toBe(end);
      if (proof === "arithmetic") {
        expect(end).toBe(plainBound(tubes, means));
      } else {
        expect(allows(highs, tubes, means, order)).toBe(true);
        expect(canEndBy(highs, tubes, means, end - 1, FOR_A_PROOF)).toBe(false);
      }
    },
    300_000,
  );
});
