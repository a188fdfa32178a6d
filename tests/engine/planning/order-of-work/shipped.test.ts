/** The order of work of every practical of the course: proved by the engine, and that nothing is shorter by a general-purpose solver (HiGHS). */
import load from "highs";
import { describe, expect, test } from "vitest";
import { practicalPaths, readPage, readPracticalFile } from "../../../../src/build/practical-files.ts";
import type { Means } from "../../../../src/engine/planning/order-of-work/bench-work.ts";
import { shortest } from "../../../../src/engine/planning/order-of-work/shortest.ts";
import { tubeWorkOf } from "../../../../src/engine/planning/order-of-work/tube-work.ts";
import { faultsOf } from "./faults.ts";
import { canEndBy } from "./work-by-milp.ts";

const ROOT = process.cwd();
const highs = await load();
const paths = practicalPaths(ROOT);

describe.each(paths)("%s", (path) => {
  const read = readPracticalFile(path, readPage(ROOT, path));
  if ("faults" in read) throw new Error(`${path} has faults`);
  const tubes = tubeWorkOf(read.practical);

  test.each([1, 2])(
    "for %i",
    (people) => {
      const means: Means = { people, burners: 1, tubes: {}, partsInOrder: true, rinse: 2 };
      const { bars, end, least } = shortest(tubes, means);
      expect(faultsOf(tubes, means, bars)).toEqual([]);
      expect(least).toBe(end);
      expect(canEndBy(highs, tubes, means, end - 1)).toBe(false);
    },
    120_000,
  );
});
