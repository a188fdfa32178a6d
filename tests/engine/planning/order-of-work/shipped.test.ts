/**
 * The order of work of every practical of the course: proved by the engine, and proved once more without it. Where the sum of the work, the
 * burner's work or one tube's own time is as long as the order, that is the proof. Elsewhere a general-purpose solver shows that nothing a
 * quarter of a minute shorter can be done: HiGHS here and now where its programme is small, and OR-Tools CP-SAT once for the others, whose
 * answers are kept as outside data. Only a practical that has changed since then rests on the engine's own bound.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
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
/** Whole numbers in a programme that HiGHS, built for the browser, settles in seconds; some 700 took it a minute, 2000 more than five. */
const LARGEST = 500;

/** For each part in order: how many tubes, and their turns as [work, wait, burner]. */
type Parts = [count: number, turns: [work: number, wait: number, burner: boolean][]][];
const { cases: kept } = JSON.parse(readFileSync(join(ROOT, "tests/reference/orders-of-work.json"), "utf8")) as {
  cases: { practical: string; people: number; end: number; parts: Parts }[];
};

function partsOf(tubes: readonly TubeWork[]): Parts {
  return [...new Set(tubes.map(({ part }) => part))].map((part) => {
    const mine = tubes.filter((tube) => tube.part === part);
    return [mine.length, mine[0].turns.map(({ work, wait, burner }) => [work, wait, burner])];
  });
}

/** The end that the outside solver found and proved for just this work, with tubes enough. */
const provedOutside = (tubes: readonly TubeWork[], { people, tubes: there }: Means): number | undefined =>
  Object.keys(there).length > 0
    ? undefined
    : kept.find((one) => one.people === people && JSON.stringify(one.parts) === JSON.stringify(partsOf(tubes)))?.end;

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
    const proof =
      order.end <= plainBound(tubes, means)
        ? "arithmetic"
        : sizeOf(tubes, means, order.end - 1) <= LARGEST
          ? "HiGHS"
          : provedOutside(tubes, means) !== undefined
            ? "CP-SAT"
            : "its own bound alone";
    const tray = Object.keys(means.tubes).length > 0 ? "a tray of tubes" : "tubes enough";
    return { path, people: means.people, tray, means, tubes, order, proof };
  });
});

describe("the order of work", () => {
  test.each(cases)(
    "of $path for $people with $tray is the shortest, by $proof",
    ({ means, tubes, order: { bars, end, least }, proof }) => {
      expect(faultsOf(tubes, means, bars)).toEqual([]);
      expect(least).toBe(end);
      if (proof === "arithmetic") expect(end).toBe(plainBound(tubes, means));
      if (proof === "CP-SAT") expect(end).toBe(provedOutside(tubes, means));
      if (proof === "HiGHS") expect(canEndBy(highs, tubes, means, end - 1)).toBe(false);
    },
    300_000,
  );

  test("is proved without the engine for at least every second case", () => {
    const proved = cases.filter(({ proof }) => proof !== "its own bound alone");
    expect(proved.length).toBeGreaterThanOrEqual(cases.length / 2);
  });
});
