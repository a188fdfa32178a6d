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
 * - `predict.dropsMs`: one test drop by drop: a zinc salt, sodium hydroxide drop by drop and then in excess. Compiled systems are kept,
 *   nothing is remembered of earlier predictions.
 * - `predict.tableMs`: every trial of the published qualitative tables that can be carried out, with a new solver.
 * - `predict.practicalMs`: every salt the lamp-room practical allows, through its whole procedure, with a new solver.
 * - `predict.bordersMs`: the same with everything that stands on a border, as the build packs it.
 * - `predict.practical25Ms`, `practical25AgainMs`: every salt of the school list through an invented procedure of 25 tests
 *   (bench/procedure-of-25.ts), with a new solver, and with a predictor that has done it before. These six are medians, in processor time of
 *   the thread, which hardly hangs on what else the machine does.
 * - `predict.practical25ToLinearSolve`: the first of these two in units of that linear system, in the same run.
 * - `deduce.medianMs`, `p99Ms`: one conclusion, over all records that differ from a walkthrough's own in one or two observations (any
 *   other reading, or not done), both walkthroughs.
 * - `reason.records25`: one conclusion of three samples after the 25 tests, school list, over 400 records (bench/reasoning.ts) of drawn
 *   salts in each of which some to all cells are filled; every second has one slip in it. Aim: median 1 ms, p99 4 ms.
 * - `reason.sixSamples`: one conclusion from nothing recorded, six samples of the advanced list, the largest space: `shareMs` where the
 *   paper says that three hold the same cation, `shareInAllMs` where it also says how many cations there are in all, `inAllMs` where it
 *   says only how many different cations and anions there are in all; `bothMs` where three hold the same cation and the other three the
 *   same anion, `bothDifferMs` where no two of each three do, `bothInAllMs` where the first also has a number of each kind. Aim: 16 ms.
 *   `everyTwoDifferMs`: no two of the six hold the same cation, and no two the same anion; without an aim.
 * - `reason.proofs`: all that proves the certain ions of one conclusion, same records; `nextTests`: what to test next. Aim: 50 ms.
 * - `reason.solverToProof`: time of a general-purpose solver of integer programmes (HiGHS, from a model that lists every assignment; writing
 *   it is not counted) in units of ours, over 20 proofs of two samples, where both must find equally few observations.
 * - `choose.practicalMs`: the sets of unknowns for the lamp-room practical from a school store's usual salts, all of them judged;
 *   `choose.eightMs`: for eight samples that nothing ties together, of which only some can be looked at; `choose.aboutMs`: what is said of
 *   one set of the first, median over those named.
 * - `interaction.medianMs`, `p99Ms`: from the event of a changed observation to the painted conclusion (verdict and evidence), in a real
 *   browser with its processor slowed down four times, after the reasoning has come. Aim: 50 ms. `settledMs`: the median to the last frame
 *   that changed something there: what proves each ion and what to test next are worked out after the conclusion is painted. `loopMs`: a fixed
 *   piece of arithmetic in the same slowed page, 18 ms on a quiet machine of the kind the figures were taken on: held against it, two runs compare.
 * - `plan.medianMs`: one bench plan, every walkthrough; `plan.orderMedianMs`: one order of work with its proof, the same, for one person and
 *   for two.
 * - `plan.nine`: an invented procedure of 9 tubes and 25 steps (bench/planning.ts): `oneMs`, `twoMs`: bench plan and order of work with its
 *   proof, for one person and for two (aim 20 ms); `gap`: minutes between the order and its bound, 0 where it is proved; `solverToOne`,
 *   `solverToTwo`: time of HiGHS, only to show that nothing a quarter of a minute shorter can be done, in units of our search and proof.
 * - `plan.order`: from the event of another choice on the order page of the lamp-room practical (10 tubes) to the painted order, in a real
 *   browser slowed down four times. Aim: 100 ms.
 * - `page.totalGz`, `jsGz`, `requests`: first visit to the heaviest walkthrough in a real browser: bytes on the wire, heads included.
 * - `worker.gz`, `deskGz`: what a reader loads on first changing a curve: the engine in its worker, and the page's end of the talk.
 * - `build.seconds`, `pages`: the whole build in a process of its own, content check and search index included.
 *
 * `npm run -s bench -- --scale` measures instead what a long course costs (bench/scale/): a copy of this project in a temporary folder with 20,
 * 200 and 1000 synthetic practicals, built from nothing and after one edit, and Starlight with as many plain pages in the same run. `--sizes
 * 20,200` takes other sizes. Clock and processor seconds, the most memory, bytes of a page; what one more page and one more practical cost.
 */
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { practicalPaths, readPage, readPracticalFile } from "../src/build/practical-files.ts";
import { walkthrough } from "../src/build/walkthrough.ts";
import type { Practical } from "../src/engine/index.ts";
import { benchChoosing } from "./bench/choosing.ts";
import { benchDeduce } from "./bench/conclusions.ts";
import { benchEquilibrium } from "./bench/equilibrium.ts";
import { benchInteraction } from "./bench/interaction.ts";
import { benchOrderInteraction } from "./bench/order-interaction.ts";
import { benchPlanning } from "./bench/planning.ts";
import { benchPredict } from "./bench/predictions.ts";
import { benchReasoning } from "./bench/reasoning.ts";
import { benchScale } from "./bench/scale/scale.ts";
import { benchBuild, benchPage, DIST } from "./bench/site.ts";
import { weighEngine } from "./engine-weight.ts";

const ROOT = resolve(import.meta.dirname, "..");
const LAMP_ROOM = "lamp-room-shelf";

function readPracticals(): { id: string; practical: Practical }[] {
  return practicalPaths(ROOT).map((path) => {
    const read = readPracticalFile(path, readPage(ROOT, path));
    if ("faults" in read) throw new Error(`${path} has faults: npm run check names them.`);
    return { id: path.replace(/.*\/|\.mdx$/g, ""), practical: read.practical };
  });
}

async function benchAll() {
  const equilibrium = benchEquilibrium();
  const practicals = readPracticals();
  const lampRoom = practicals.find(({ id }) => id === LAMP_ROOM)?.practical;
  if (lampRoom === undefined) throw new Error(`There is no practical ${LAMP_ROOM}.`);
  const predict = benchPredict(lampRoom);
  const walkthroughs = practicals.map(({ practical }) => walkthrough(practical));
  const deduction = benchDeduce(walkthroughs);
  const reason = await benchReasoning();
  const choose = benchChoosing(lampRoom);
  const plan = await benchPlanning(walkthroughs);
  const build = await benchBuild();
  const page = await benchPage(practicals.map(({ id }) => id));
  const interaction = await benchInteraction(LAMP_ROOM);
  const order = await benchOrderInteraction(LAMP_ROOM);
  const { worker, desk } = weighEngine(DIST);
  console.log(
    JSON.stringify({
      equilibrium,
      predict,
      deduce: deduction,
      reason,
      choose,
      interaction,
      plan: { ...plan, order },
      page,
      worker: { gz: worker, deskGz: desk },
      build,
    }),
  );
}

const { values } = parseArgs({
  options: { scale: { type: "boolean" }, sizes: { type: "string", default: "20,200,1000" } },
});
if (values.scale) {
  const sizes = values.sizes.split(",").map(Number);
  if (sizes.some((size) => !Number.isInteger(size) || size < 1)) {
    throw new Error(`--sizes is "${values.sizes}"; expected whole numbers from 1 with commas between, such as 20,200.`);
  }
  console.log(JSON.stringify(await benchScale(sizes)));
} else {
  await benchAll();
}
