/** What a blind practice is made from: sets of unknowns to draw from, and what each of their tubes looks like at every test. */

import { asSample } from "../engine/bench/as-sample.ts";
import { contentsOf } from "../engine/bench/contents.ts";
import type { PredictionTable } from "../engine/bench/prediction-table.ts";
import type { Content } from "../engine/bench/salt.ts";
import { formKey, tabulate } from "../engine/bench/tabulate.ts";
import { solidForm } from "../engine/bench/weighed-as.ts";
import { BENCH_PRACTICE } from "../engine/constants/bench-practice.ts";
import { COLOURS } from "../engine/constants/colours.ts";
import { salts as store } from "../engine/constants/salts.ts";
import { BOUNDS, chooseUnknowns, judge } from "../engine/deduction/choose-unknowns.ts";
import { STANDINGS, type Standing } from "../engine/deduction/hardness.ts";
import { isSafe } from "../engine/deduction/sets-of-unknowns.ts";
import type { BenchPlan } from "../engine/planning/bench-plan.ts";
import { type Colour, cellsOf, type Practical, type Step } from "../engine/practical.ts";
import { phrase } from "../engine/wording/phrase.ts";
import { ownSet } from "./answer.ts";
import { predictor } from "./predictor.ts";
import { storeFor } from "./school-store.ts";

export interface Practice {
  table: PredictionTable;
  /** Sets to draw from: a salt (index) for each sample. All are decided by the tests, where any set is. None where no set is safe to give out. */
  draws: number[][];
  /** How hard each draw is. */
  standings: Standing[];
  /** Names of the colours below. */
  colours: Colour[];
  /** solutions[x][i]: colour (index) of salt i of prediction set x in its bottle; -1 where it is given as a solid only. */
  solutions: number[][];
  /** The same of the solid; -1 where it is given as a solution only, or nothing is known of its looks. */
  solids: number[][];
  /** liquids[x][i][c]: colour (index) of the liquid at the end of cell c; -1 where there is none. */
  liquids: number[][][];
  /** Liquid in the tube at the end of each cell, cm3. */
  cm3: number[];
}

/** Sets embedded of each standing: enough for any class, and a few hundred bytes in the page. */
const LISTED = 80;

export function practiceOf(practical: Practical, plan: BenchPlan): Practice {
  const { table, predictions } = tabulate(practical, predictor, phrase);
  const { draws, standings } = drawsOf(table, practical);
  const colours: Colour[] = [];
  const colourIndex = (colour: Colour | undefined) => {
    if (colour === undefined) return -1;
    if (!colours.includes(colour)) colours.push(colour);
    return colours.indexOf(colour);
  };
  const solutions: number[][] = [];
  const solids: number[][] = [];
  const liquids: number[][][] = [];
  for (const [x, { salts }] of table.sets.entries()) {
    const label = table.samples.find(({ set }) => set === x)?.label;
    const sample = practical.samples.find((one) => one.label === label) ?? practical.samples[0];
    const shown = predictions.get(formKey(sample));
    const contents = contentsOf(practical.paper, sample.holds);
    const looks = (of: (salt: Content) => Colour | undefined) =>
      salts.map((salt) => {
        const content = contents.find(({ formula }) => formula === table.salts[salt].formula);
        return content ? colourIndex(of(content)) : -1;
      });
    solutions.push(looks((salt) => (sample.given === "solid" ? undefined : colourOfSolution(salt, sample))));
    solids.push(looks((salt) => (sample.given === "solution" ? undefined : colourOfSolid(salt))));
    liquids.push(
      salts.map((salt) =>
        table.cells.map(({ id }) => colourIndex(shown?.get(table.salts[salt].formula)?.get(id)?.solution)),
      ),
    );
  }
  return { table, draws, standings, colours, solutions, solids, liquids, cm3: filling(practical, plan) };
}

/**
 * The walkthrough's own set, which its readers know, is left out unless it is the only one that is safe to give out. Where none is, nothing
 * is drawn.
 */
function drawsOf(table: PredictionTable, practical: Practical): Pick<Practice, "draws" | "standings"> {
  const own = ownSet(table, practical.samples);
  const { sets } = chooseUnknowns(table, [...new Set([...storeFor(table), ...own])], { ...BOUNDS, listed: LISTED });
  const judged = STANDINGS.filter((standing) => standing !== "undecided").flatMap((standing) => sets[standing]);
  const found = judged.length > 0 ? judged : sets.undecided;
  const ownIsSafe = own.every((salt, s) => isSafe(table, s, salt));
  const onlyOwn = ownIsSafe ? [{ salts: own, standing: judge(table, own)?.standing ?? "undecided" }] : [];
  const all = found.length > 0 ? found : onlyOwn;
  const others = all.filter(({ salts }) => salts.join() !== own.join());
  const chosen = others.length > 0 ? others : all;
  return { draws: chosen.map(({ salts }) => [...salts]), standings: chosen.map(({ standing }) => standing) };
}

/** As the engine sees it before anything is done. */
function colourOfSolution(salt: Content, sample: Practical["samples"][number]): Colour | undefined {
  const look: Step[] = [{ do: "take", volume: { cm3: 1 } }, { do: "shake" }];
  const seen = predictor.predict(asSample(salt, { ...sample, given: "solution" }), [
    { label: "z", title: "Look", tests: [{ steps: look }] },
  ]);
  return seen.get("z")?.solution;
}

/** As the list of the school store has it. */
function colourOfSolid(salt: Content): Colour | undefined {
  const looks = store.find(({ formula }) => formula === solidForm(salt))?.appearance ?? "";
  return (Object.keys(COLOURS) as Colour[])
    .toSorted((a, b) => b.length - a.length)
    .find((name) => new RegExp(`\\b${name}\\b`).test(looks));
}

/** Liquid in a tube after each test of a part, as the plan reckons it. */
function filling({ parts }: Practical, plan: BenchPlan): number[] {
  const mark = (part: string, reagent: string): number =>
    Math.max(
      0,
      ...plan.tubes
        .filter((tube) => tube.part === part)
        .flatMap(({ marks }) => marks.map(({ excess }) => (excess?.reagent === reagent ? excess.cm3 : 0))),
    );
  let cm3 = 0;
  return cellsOf(parts).map(({ part, test, index }) => {
    if (index === 0) cm3 = 0;
    for (const step of test.steps) {
      if (step.do === "take" && "volume" in step) cm3 += step.volume.cm3;
      if (step.do !== "add") continue;
      if ("volume" in step.amount) cm3 += step.amount.volume.cm3;
      if ("drops" in step.amount) cm3 += step.amount.drops * BENCH_PRACTICE.drop.value;
      if ("inExcess" in step.amount) cm3 += mark(part.label, step.reagent);
    }
    return Math.round(cm3 * 100) / 100;
  });
}
