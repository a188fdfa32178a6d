/** What the pages get from the cache is what is computed without one, down to the last bit. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { cacheIn } from "../../../src/build/cache/cache.ts";
import { keptMemory } from "../../../src/build/cache/shelves.ts";
import { classPage } from "../../../src/build/class-sheet.ts";
import { keptCurves } from "../../../src/build/kept-pages.ts";
import { liveCurves } from "../../../src/build/live-curves.ts";
import { practicalPaths, readPage, readPracticalFile } from "../../../src/build/practical-files.ts";
import { walkthrough } from "../../../src/build/walkthrough.ts";
import type { Borderline } from "../../../src/engine/bench/borderline.ts";
import { predictSalt } from "../../../src/engine/bench/predict.ts";
import type { Prediction } from "../../../src/engine/bench/prediction.ts";
import { createPredictor } from "../../../src/engine/bench/predictor.ts";
import { createSolver } from "../../../src/engine/equilibrium/solve.ts";
import { phrase, tabulate } from "../../../src/engine/index.ts";
import { ROOT } from "../broken.ts";

// Each works a practical out from nothing, beside whatever else is tested; the limit only ends what hangs.
vi.setConfig({ testTimeout: 300_000 });

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "results-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The shortest papers: each is worked out several times here. */
const practicals = practicalPaths(ROOT)
  .map((path) => {
    const read = readPracticalFile(path, readPage(ROOT, path));
    if ("faults" in read) throw new Error(`${path} has faults`);
    return [path.replace(/.*\/|\.mdx$/g, ""), read.practical] as const;
  })
  .toSorted(([, a], [, b]) => a.order - b.order)
  .slice(0, 2);

test.each(practicals)("%s: what is recalled is what was worked out", (name, practical) => {
  // No project is named in the environment of a test: this is computed here and now.
  const { practical: _, ...computed } = walkthrough(practical);
  const pages = {
    computed,
    curves: liveCurves(practical, createSolver()),
    sheet: classPage(practical, createSolver()),
  };
  cacheIn(folder).write("pages", name, pages);
  expect(cacheIn(folder).read("pages", name)).toStrictEqual(pages);
  expect(keptCurves(practical)).toStrictEqual(pages.curves);
});

test("a table made from kept predictions is the table made from new ones", () => {
  const [, practical] = practicals[0];
  const predictorOver = (cache: ReturnType<typeof cacheIn>) => {
    const added: string[] = [];
    const memory = <T>(name: string) => {
      const kept = keptMemory<T>(cache, name);
      const set: typeof kept.set = (part, sample, value) => {
        added.push(`${name} ${sample}`);
        kept.set(part, sample, value);
      };
      return { ...kept, set };
    };
    const predicted = memory<Map<string, Prediction>>("predicted");
    const bordered = memory<Map<string, Borderline>>("bordered");
    const keep = () => {
      predicted.keep();
      bordered.keep();
    };
    return { keep, added, predictor: createPredictor(createSolver(), { predicted, bordered }, predictSalt) };
  };
  const first = predictorOver(cacheIn(folder));
  const made = tabulate(practical, first.predictor, phrase);
  first.keep();
  expect(first.added.length).toBeGreaterThan(0);
  const second = predictorOver(cacheIn(folder));
  expect(tabulate(practical, second.predictor, phrase)).toStrictEqual(made);
  expect(second.added).toEqual([]);
});

test("a process with a cache says the same as one without", () => {
  const script = join(import.meta.dirname, "print-walkthrough.ts");
  const run = (environment: Record<string, string>) =>
    execFileSync(process.execPath, [script, practicals[0][0]], {
      cwd: ROOT,
      encoding: "utf8",
      env: { ...process.env, ...environment },
    });
  const alone = run({});
  expect(alone.length).toBeGreaterThan(1000);
  const kept = { IONWRIGHT_CACHE_OF: ROOT };
  expect(run(kept)).toBe(alone);
  expect(run(kept)).toBe(alone);
});
