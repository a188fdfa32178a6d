/**
 * Measures the engine and the built site: `npm run --silent bench` prints one JSON object and nothing else; what is being measured goes
 * to the error stream.
 * The times are benchmarks, not limits that a test asserts: they belong to the machine they were taken on and to its load. Bytes and
 * requests are the same everywhere. Times have three significant figures. Every problem is done several times and counts once, with the
 * median of its times: what else the machine did meanwhile does not count, and a p99 tells of hard problems.
 *
 * - `equilibrium.medianMs`, `p99Ms`: one equilibrium, solved cold (no starting point), over the 60 mixtures of
 *   tests/reference/equilibrium-open.json under the conditions of that reference. The compiled systems are kept, as they are on the bench.
 * - `equilibrium.ratioToLinearSolve`: that median in units of one dense linear system of 12 equations, solved by the engine's own
 *   linear-system.ts in the same run: a figure that another machine can be held against.
 * - `predict.practicalMs`: every salt the lamp-room practical allows, through its whole procedure, with a new solver; median.
 * - `deduce.medianMs`, `p99Ms`: one conclusion, over all records that differ from a walkthrough's own in one or two observations (any
 *   other reading, or not done), both walkthroughs.
 * - `plan.medianMs`: one bench plan, both walkthroughs.
 * - `page.totalGz`, `jsGz`, `requests`: first visit to the heaviest walkthrough in a real browser: bytes on the wire, heads included.
 * - `worker.gz`, `deskGz`: what a reader loads on first changing a curve: the engine in its worker, and the page's end of the talk.
 * - `build.seconds`, `pages`: the whole build in a process of its own, content check and search index included.
 */
import { spawn } from "node:child_process";
import { readdir } from "node:fs/promises";
import { join, resolve } from "node:path";
import { performance } from "node:perf_hooks";
import { practicalPaths, readPage, readPracticalFile } from "../src/build/practical-files.ts";
import { walkthrough } from "../src/build/walkthrough.ts";
import type { Walkthrough } from "../src/build/walkthrough.types.ts";
import type { TableRecord } from "../src/engine/bench/prediction-table.ts";
import { createPredictor } from "../src/engine/bench/predictor.ts";
import { DEFAULT_TUBES } from "../src/engine/constants/glassware.ts";
import { solveLinear } from "../src/engine/equilibrium/linear-system.ts";
import { createSolver, deduce, type Practical, phrase, planBench, tabulate } from "../src/engine/index.ts";
import { conditionsOf, equilibriumReference, referenceDatabase, totalsOf } from "../tests/verification/equilibrium.ts";
import { startChromium } from "./chromium.ts";
import { weighEngine } from "./engine-weight.ts";
import { type FirstVisit, weighFirstVisit } from "./page-weight.ts";
import { serve } from "./serve.ts";

const ROOT = resolve(import.meta.dirname, "..");
const DIST = join(ROOT, ".cache", "site-bench");
const LAMP_ROOM = "lamp-room-shelf";

/** Rounds over which each figure is taken, and rounds before them that only warm the machine up. */
const ROUNDS = { equilibrium: 101, linear: 201, predict: 15, deduce: 5, plan: 201 };
const WARM_UP = 3;
/** Linear systems solved between two looks at the clock, which is too coarse for one. */
const LINEAR_BATCH = 500;
const LINEAR_SIZE = 12;

const say = (what: string): void => console.error(what);

/** Time of one call, ms. */
function timed(call: () => unknown): number {
  const begun = performance.now();
  call();
  return performance.now() - begun;
}

/** The time of each call, ms: the median of so many rounds, after a few that do not count. */
function times(rounds: number, calls: readonly (() => unknown)[]): number[] {
  for (let round = 0; round < WARM_UP; round++) for (const call of calls) call();
  const each = Array.from({ length: rounds }, () => calls.map(timed));
  return calls.map((_, call) => median(each.map((round) => round[call])));
}

/** The value that this part of all values does not exceed. */
function quantile(values: readonly number[], part: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(part * sorted.length) - 1)];
}
const median = (values: readonly number[]): number => quantile(values, 0.5);
const rounded = (value: number): number => Number(value.toPrecision(3));

function benchEquilibrium() {
  say("equilibrium: 60 mixtures, cold");
  const solve = createSolver(referenceDatabase());
  const calls = equilibriumReference.mixtures.map((mixture) => {
    const problem = { totals: totalsOf(mixture), waterKg: 1 };
    const conditions = conditionsOf(mixture);
    return () => {
      const found = solve(problem, conditions);
      if (!found.converged) throw new Error(`mixture ${mixture.id}: ${found.reason}`);
    };
  });
  const each = times(ROUNDS.equilibrium, calls);
  const ratio = median(each) / linearSolveMs();
  return {
    medianMs: rounded(median(each)),
    p99Ms: rounded(quantile(each, 0.99)),
    ratioToLinearSolve: rounded(ratio),
  };
}

/** Median time of one fixed dense system, ms; making a fresh copy of it, which the solver overwrites, is part of the time. */
function linearSolveMs(): number {
  const n = LINEAR_SIZE;
  // Full, well away from singular, and such that rows must be exchanged.
  const matrix = Float64Array.from({ length: n * n }, (_, at) => {
    const [i, j] = [Math.floor(at / n), at % n];
    return 1 / (1 + i + j) + (i + j === n - 1 ? n : 0);
  });
  const right = Float64Array.from({ length: n }, (_, i) => i + 1);
  const A = new Float64Array(n * n);
  const b = new Float64Array(n);
  const batch = () => {
    for (let count = 0; count < LINEAR_BATCH; count++) {
      A.set(matrix);
      b.set(right);
      if (!solveLinear(A, b, n, n)) throw new Error("the fixed linear system was called singular");
    }
  };
  return median(times(ROUNDS.linear, [batch])) / LINEAR_BATCH;
}

function readPracticals(): { id: string; practical: Practical }[] {
  return practicalPaths(ROOT).map((path) => {
    const read = readPracticalFile(path, readPage(ROOT, path));
    if ("faults" in read) throw new Error(`${path} has faults: npm run check names them.`);
    return { id: path.replace(/.*\/|\.mdx$/g, ""), practical: read.practical };
  });
}

function benchPredict(practicals: ReturnType<typeof readPracticals>) {
  say(`predict: all salts of ${LAMP_ROOM}`);
  const practical = practicals.find(({ id }) => id === LAMP_ROOM)?.practical;
  if (practical === undefined) throw new Error(`There is no practical ${LAMP_ROOM}.`);
  const each = times(ROUNDS.predict, [() => tabulate(practical, createPredictor(createSolver()), phrase)]);
  return { practicalMs: rounded(median(each)) };
}

/** All other records that one change makes; none where the observation is already changed. */
function changes({ table, record }: Walkthrough): { place: string; change: (to: TableRecord) => TableRecord }[] {
  return table.cells.flatMap((cell) =>
    cell.samples.flatMap((sample) => {
      const readings: (number | undefined)[] = [...cell.readings.keys(), undefined];
      return readings
        .filter((reading) => reading !== record[sample]?.[cell.id])
        .map((reading) => ({
          place: `${sample} ${cell.id}`,
          change: (to: TableRecord) => {
            const { [cell.id]: _, ...rest } = to[sample] ?? {};
            return { ...to, [sample]: reading === undefined ? rest : { ...rest, [cell.id]: reading } };
          },
        }));
    }),
  );
}

function nearRecords(of: Walkthrough): TableRecord[] {
  const single = changes(of);
  return single.flatMap(({ place, change }, index) => {
    const once = change(of.record);
    const second = single.slice(index + 1).filter((other) => other.place !== place);
    return [once, ...second.map((other) => other.change(once))];
  });
}

function benchDeduce(walkthroughs: readonly Walkthrough[]) {
  const each = walkthroughs.flatMap((of) => {
    const calls = nearRecords(of).map((record) => () => deduce(of.table, record));
    say(`deduce: ${calls.length} records`);
    return times(ROUNDS.deduce, calls);
  });
  return { medianMs: rounded(median(each)), p99Ms: rounded(quantile(each, 0.99)) };
}

function benchPlan(walkthroughs: readonly Walkthrough[]) {
  say("plan: both walkthroughs");
  const calls = walkthroughs.map(
    ({ practical, table }) =>
      () =>
        planBench(practical, table, DEFAULT_TUBES),
  );
  return { medianMs: rounded(median(times(ROUNDS.plan, calls))) };
}

async function benchBuild() {
  say("build: the whole site");
  const begun = performance.now();
  await runBuild();
  const seconds = (performance.now() - begun) / 1000;
  const files = await readdir(DIST, { recursive: true });
  return { seconds: rounded(seconds), pages: files.filter((file) => file.endsWith(".html")).length };
}

/** The build speaks on the error stream, so that standard output stays one JSON object. */
function runBuild(): Promise<void> {
  const child = spawn(process.execPath, [join(ROOT, "scripts/build.ts"), "--out", DIST], {
    cwd: ROOT,
    env: { ...process.env, IONWRIGHT_BASE: "/" },
    stdio: ["ignore", process.stderr, process.stderr],
  });
  return new Promise((done, fail) => {
    child.on("error", fail);
    child.on("close", (code) => (code === 0 ? done() : fail(new Error("The site could not be built; see above."))));
  });
}

async function benchPage(ids: readonly string[]) {
  const site = await serve({ port: 0, base: "/", dist: DIST });
  const browser = await startChromium();
  try {
    const weights: FirstVisit[] = [];
    for (const id of ids) {
      say(`page: first visit to ${id}`);
      weights.push(await weighFirstVisit(browser, `${site.address}practicals/${id}/`));
    }
    const heaviest = weights.reduce((a, b) => (b.total > a.total ? b : a));
    return { totalGz: heaviest.total, jsGz: heaviest.javaScript, requests: heaviest.requests };
  } finally {
    await browser.close();
    await site.close();
  }
}

const equilibrium = benchEquilibrium();
const practicals = readPracticals();
const predict = benchPredict(practicals);
const walkthroughs = practicals.map(({ practical }) => walkthrough(practical));
const deduction = benchDeduce(walkthroughs);
const plan = benchPlan(walkthroughs);
const build = await benchBuild();
const page = await benchPage(practicals.map(({ id }) => id));
const { worker, desk } = weighEngine(DIST);
console.log(
  JSON.stringify({ equilibrium, predict, deduce: deduction, plan, page, worker: { gz: worker, deskGz: desk }, build }),
);
