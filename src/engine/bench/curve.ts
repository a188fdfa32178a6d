/**
 * Where an ion is while a reagent is added: how much of it each solid and each dissolved species holds, against the volume added. It
 * shows why a precipitate appears, and why it goes again.
 */
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import { TEMPERATURE } from "../constants/kinetic-gates.ts";
import type { EquilibriumResult, Solver } from "../equilibrium/solve.ts";
import { compileDatabase, type Species, WATER } from "../equilibrium/species.ts";
import { parseFormula } from "../formula/parse.ts";
import type { Part, Step } from "../practical.ts";
import { amountsOf } from "./amounts.ts";
import { carryOutTest } from "./carry-out-test.ts";
import { componentsOf } from "./composition.ts";
import { reagentComponents } from "./operations.ts";
import { pouredAfter, volumeAdded } from "./portion.ts";
import { nothingTaken, type Portion, type TestedSalt } from "./sample.ts";
import { emptyTube, pour, settle, type Tube } from "./tube.ts";

export interface CurveSeries {
  /** Species id: "Zn(OH)2(s, amorphous)", "[Zn(OH)4]^2-". */
  id: string;
  kind: "solid" | "dissolved";
  /** mol of the ion held in it at each point: one mole of Ag2O(s) holds two moles of silver. */
  mol: number[];
}

export interface Curve {
  reagent: string;
  /** The ion that is followed. */
  ion: string;
  /** Reagent added, cm3, from 0. */
  x: number[];
  /** Tests that end along the curve, by their place in the part, with the volume at which they end; the last ends the curve. */
  ends: { test: number; x: number }[];
  /** mol of the ion in the tube at each point; gas that leaves takes its own with it. */
  total: number[];
  /** Solids that hold a twentieth of the ion or more at some point, and dissolved species that hold a tenth; solids first, each kind in the order in which they come to their most. */
  series: CurveSeries[];
  /** mol of the ion in all other species together. */
  others: number[];
}

/** Whether nothing precipitates that is worth a line. */
export const hasNoSolid = ({ series }: Curve): boolean => series.every(({ kind }) => kind !== "solid");

/** Part of the ion that a solid, and a dissolved species, must hold at some point to have a line of its own: the eye sees the one, not the other. */
const MAIN = { solid: 0.05, dissolved: 0.1 };

/** Points to a drop. */
const POINTS_PER_DROP = 2;

/** Points to an addition, at most: 15 cm3 at two a drop. */
const MOST_POINTS = 600;

export type Addition = Extract<Step, { do: "add" }>;
const isLiquid = (step: Step): step is Addition => step.do === "add" && !("pieces" in step.amount);
const HELD: readonly Step["do"][] = ["shake", "test gas", "lead through", "indicator"];
const isHeld = (step: Step): boolean => HELD.includes(step.do);
const sameReagent = (a: Addition, b: Addition): boolean =>
  a.reagent === b.reagent && a.at?.molPerDm3 === b.at?.molPerDm3;

/** The last addition of a liquid in the test: its place among the steps, or -1. */
const lastLiquid = (part: Part, test: number): number => part.tests[test].steps.findLastIndex(isLiquid);

/** The last addition of a liquid in the test, the one its curve follows; undefined when it adds none. */
export const additionOf = (part: Part, test: number): Addition | undefined =>
  part.tests[test].steps[lastLiquid(part, test)] as Addition | undefined;

/**
 * The test in which the addition began: the test itself, or an earlier one whose last step added the same reagent, when nothing but that
 * reagent has gone in since ("add five drops", then "add in excess").
 */
function beginning(part: Part, test: number): number {
  const at = lastLiquid(part, test);
  const { steps } = part.tests[test];
  if (test === 0 || !steps.slice(0, at).every(isHeld)) return test;
  const before = lastLiquid(part, test - 1);
  const earlier = part.tests[test - 1].steps;
  const goesOn =
    before >= 0 &&
    earlier.slice(before + 1).every(isHeld) &&
    sameReagent(earlier[before] as Addition, steps[at] as Addition);
  return goesOn ? beginning(part, test - 1) : test;
}

interface Point {
  x: number;
  amounts: Map<string, number>;
  contents: Readonly<Record<string, number>>;
}

const WATERY = new Set(["H+", WATER]);
const database = compileDatabase();

/**
 * The curve of the last liquid added in a test, after all earlier tests of the part. The ion followed is `ion`, or the one that makes the
 * precipitate, the sample's cation before all others; without a precipitate, the first of them that the reagent does not bring.
 *
 * Undefined where there is nothing to follow: the test adds no liquid, or adds it to a dry solid, or comes after something the engine has no
 * chemistry for.
 * @throws NoEquilibrium when the solver gives up, UnknownReagent and RangeError for a test that cannot be carried out
 */
export function curve(salt: TestedSalt, part: Part, testIndex: number, solve: Solver, ion?: string): Curve | undefined {
  if (lastLiquid(part, testIndex) < 0) return undefined;
  const from = beginning(part, testIndex);
  const tube = emptyTube();
  const portion = nothingTaken(salt);
  if (!prepare(part, from, tube, portion, solve)) return undefined;
  const first = settle(tube, solve);
  const before = { ...tube.contents };
  const points = [pointOf(0, first, tube)];
  const ends: Curve["ends"] = [];
  const { reagent } = part.tests[from].steps[lastLiquid(part, from)] as Addition;
  for (let test = from; test <= testIndex; test++) {
    for (const step of part.tests[test].steps.slice(test === from ? lastLiquid(part, from) : 0)) {
      if (!isLiquid(step)) {
        if (isHeld(step)) continue;
        break;
      }
      addEvenly(step, volumeAdded(step, portion.poured), tube, points, solve);
      portion.poured = pouredAfter(portion.poured, step);
    }
    ends.push({ test, x: points[points.length - 1].x });
  }
  const brought = reagentComponents(reagent);
  const followed = ion ?? chooseIon(salt, points, before, brought);
  return { reagent, ion: followed, ends, ...follow(followed, points) };
}

/** Carries out all that comes before the addition. False when the engine cannot follow it, or when the tube is still dry. */
function prepare(part: Part, test: number, tube: Tube, portion: Portion, solve: Solver): boolean {
  const at = lastLiquid(part, test);
  const before = [...part.tests.slice(0, test), { ...part.tests[test], steps: part.tests[test].steps.slice(0, at) }];
  const together = new Map<string, number>();
  const hand = { warm: TEMPERATURE.warm.value, air: true };
  for (const one of before) {
    if (carryOutTest(one, tube, portion, together, solve, hand).unknown) return false;
  }
  tube.air = false;
  return tube.waterKg > 0;
}

/** Adds `cm3` in even parts of a drop, with a point after each. */
function addEvenly(step: Addition, cm3: number, tube: Tube, points: Point[], solve: Solver): void {
  const perDm3 = reagentComponents(step.reagent, step.at?.molPerDm3);
  const drops = cm3 / BENCH_PRACTICE.drop.value;
  const count = Math.min(Math.max(1, Math.round(drops * POINTS_PER_DROP)), MOST_POINTS);
  const start = points[points.length - 1].x;
  for (let n = 1; n <= count; n++) {
    pour(tube, perDm3, cm3 / count);
    points.push(pointOf(start + (cm3 * n) / count, settle(tube, solve), tube));
  }
}

const pointOf = (x: number, result: EquilibriumResult, tube: Tube): Point => ({
  x,
  amounts: amountsOf(result),
  contents: { ...tube.contents },
});

/** The basis component that stands for an ion, and its relatives of another oxidation state when it is a metal: with ions in one mole of each. */
function carriersOf(ion: string): Map<string, number> {
  const own = Object.keys(componentsOf({ [ion]: 1 })).find((id) => !WATERY.has(id)) ?? ion;
  const { elements, charge } = parseFormula(own);
  const [metal, ...more] = Object.keys(elements);
  if (charge <= 0 || more.length > 0) return new Map([[own, 1]]);
  return new Map(
    database.components.flatMap(({ id, charge: plus }): [string, number][] => {
      const atoms = parseFormula(id).elements;
      return plus > 0 && Object.keys(atoms).length === 1 && atoms[metal] ? [[id, atoms[metal]]] : [];
    }),
  );
}

/** Ions held in one mole of every species and solid that holds any. */
function holdersOf(ion: string): Map<string, { kind: CurveSeries["kind"]; holds: number }> {
  const carriers = carriersOf(ion);
  const holds = ({ nu }: Species) =>
    nu.reduce((sum, [index, moles]) => sum + moles * (carriers.get(database.components[index].id) ?? 0), 0);
  return new Map(
    [
      ...database.phases.flatMap((phase) =>
        phase.kind === "solid" ? [{ id: phase.id, kind: "solid" as const, holds: holds(phase) }] : [],
      ),
      ...database.species.map((species) => ({ id: species.id, kind: "dissolved" as const, holds: holds(species) })),
    ].flatMap(({ id, ...held }) => (held.holds > 0 ? [[id, held]] : [])),
  );
}

/** Part of the ion that is solid, at its most. */
function mostSolid(ion: string, points: readonly Point[]): number {
  const { series, total } = follow(ion, points);
  const solids = series.filter(({ kind }) => kind === "solid");
  return Math.max(...total.map((all, n) => (all > 0 ? solids.reduce((sum, { mol }) => sum + mol[n], 0) / all : 0)));
}

/** The ion that makes the precipitate: of the sample's ions and of what stood in the tube before, cations first; none that the reagent itself brings. */
function chooseIon(
  salt: TestedSalt,
  points: readonly Point[],
  before: Readonly<Record<string, number>>,
  brought: Readonly<Record<string, number>>,
): string {
  const isCation = (id: string) => parseFormula(id).charge > 0;
  const own = Object.keys(salt.ions).sort((a, b) => Number(isCation(b)) - Number(isCation(a)));
  const inTube = Object.keys(before).filter((id) => !WATERY.has(id) && (before[id] ?? 0) > 0);
  // Ammonium is not followed while ammonia goes in: who could tell one from the other?
  const isBrought = (id: string) => [...carriersOf(id).keys()].some((carrier) => Object.hasOwn(brought, carrier));
  const candidates = [...own.filter(isCation), ...inTube.filter(isCation), ...own, ...inTube].filter(
    (id) => !isBrought(id),
  );
  return candidates.find((id) => mostSolid(id, points) >= MAIN.solid) ?? candidates[0] ?? own[0];
}

function follow(ion: string, points: readonly Point[]): Pick<Curve, "x" | "total" | "series" | "others"> {
  const carriers = carriersOf(ion);
  const total = points.map(({ contents }) =>
    [...carriers].reduce((sum, [id, ions]) => sum + (contents[id] ?? 0) * ions, 0),
  );
  const all = [...holdersOf(ion)].map(([id, { kind, holds }]) => ({
    id,
    kind,
    mol: points.map(({ amounts }) => (amounts.get(id) ?? 0) * holds),
  }));
  const isMain = ({ kind, mol }: CurveSeries) => mol.some((held, n) => held > 0 && held >= MAIN[kind] * total[n]);
  const peak = ({ mol }: CurveSeries) => mol.indexOf(Math.max(...mol));
  const minor = all.filter((one) => !isMain(one));
  const series = all
    .filter(isMain)
    .sort((a, b) => Number(b.kind === "solid") - Number(a.kind === "solid") || peak(a) - peak(b));
  const others = points.map((_, n) => minor.reduce((sum, { mol }) => sum + mol[n], 0));
  return { x: points.map(({ x }) => x), total, series, others };
}
