/** Which gases the allowed salts could give off in each test, and what must stand ready to show them. */
import * as say from "#words/bench.ts";
import { said } from "#words/constants.ts";
import { GAS_NAMES } from "#words/gas-names.ts";
import type { PredictionTable, TableCell } from "../bench/prediction-table.ts";
import { GAS_SAFETY } from "../constants/gas-safety.ts";
import type { GasTest, GivenOff, Step } from "../practical.ts";
import type { BenchPlan } from "./bench-plan.ts";

/** A gas that some allowed salt gives off in a test. */
export interface ExpectedGas {
  cell: TableCell;
  gas: GivenOff;
  /** Every allowed salt that would give it, mhchem. */
  salts: string[];
  /** A step of the test shows this gas. */
  tested: boolean;
}

/** Salts listed by name before "and 3 more" stands for the rest. */
const LISTED = 6;

/** Limewater with a delivery tube, beside the ways of testing at the mouth of the tube. */
export const DELIVERY = "delivery tube into limewater";
export type GasKit = GasTest | typeof DELIVERY;

/** Strength of limewater a paper asks for, beside the test that does. */
function strengthIn(steps: readonly Step[]): string {
  const lead = steps.find((step) => step.do === "lead through");
  return lead?.at ? ` (${lead.at.molPerDm3} mol/dm3)` : "";
}

/** What the steps of a test need to show a gas, one entry for each such step. */
const kitsIn = (steps: readonly Step[]): GasKit[] =>
  steps.flatMap((step): GasKit[] => {
    if (step.do === "test gas") return [step.with];
    return step.do === "lead through" ? [DELIVERY] : [];
  });

/** True when what stands ready shows the gas. */
function shows(kit: GasKit, gas: GivenOff): boolean {
  const { shownBy, alsoShownBy } = GAS_SAFETY[gas];
  const test = kit === DELIVERY ? "limewater" : kit;
  return test === shownBy || alsoShownBy?.includes(test) === true;
}

/** The gases to expect, cell by cell in the order of the paper. `stepsIn` gives the steps of a cell by its index. */
export function expectedGases(table: PredictionTable, stepsIn: (cell: number) => readonly Step[]): ExpectedGas[] {
  return table.cells.flatMap((cell, index) => {
    const kits = kitsIn(stepsIn(index));
    return cell.comesOff.map(({ gas, salts }) => ({
      cell,
      gas,
      salts: [...salts].sort((a, b) => a - b).map((salt) => table.salts[salt].formula),
      tested: kits.some((kit) => shows(kit, gas)),
    }));
  });
}

/** The gases as the plan shows them, the most harmful of a test first. */
export function gasRows(expected: readonly ExpectedGas[]): BenchPlan["gases"] {
  const rows = expected.map((one) => ({
    rank: GAS_SAFETY[one.gas].rank,
    place: expected.findIndex((other) => other.cell === one.cell),
    row: { cell: one.cell.id, gas: one.gas, from: capped(one.salts), have: said(GAS_SAFETY[one.gas].have) },
  }));
  return rows.sort((a, b) => a.place - b.place || a.rank - b.rank).map(({ row }) => row);
}

/** A way of testing a gas with how often it is needed. */
export interface GasTestCount {
  test: GasKit;
  count: number;
  /** A step asks for it; else it stands ready in case. */
  asked: boolean;
  because: string;
}

/**
 * How often each way of testing a gas is needed: once for each sample of a test that asks for it, and once for each sample of a test
 * in which the gas may come off although nobody asks. `because` tells the two apart.
 */
export function gasTestCounts(
  table: PredictionTable,
  stepsIn: (cell: number) => readonly Step[],
  expected: readonly ExpectedGas[],
): GasTestCount[] {
  const needs = new Map<GasKit, { count: number; asked: string[]; ready: Map<string, string[]> }>();
  const needFor = (test: GasKit) => {
    const need = needs.get(test) ?? { count: 0, asked: [], ready: new Map<string, string[]>() };
    needs.set(test, need);
    return need;
  };
  table.cells.forEach((cell, index) => {
    for (const kit of kitsIn(stepsIn(index))) {
      const need = needFor(kit);
      need.count += cell.samples.length;
      const place = cell.id + (kit === DELIVERY ? strengthIn(stepsIn(index)) : "");
      if (!need.asked.includes(place)) need.asked.push(place);
    }
  });
  const counted = new Set<string>();
  for (const { cell, gas, tested } of expected) {
    const { shownBy } = GAS_SAFETY[gas];
    const name = GAS_NAMES[gas];
    if (tested || !shownBy) continue;
    const need = needFor(shownBy);
    need.ready.set(name, [...(need.ready.get(name) ?? []), cell.id]);
    // One strip shows either of two gases that the same paper tells.
    const place = `${cell.id} ${shownBy}`;
    if (!counted.has(place)) need.count += cell.samples.length;
    counted.add(place);
  }
  return [...needs].map(([test, { count, asked, ready }]) => ({
    test,
    count,
    asked: asked.length > 0,
    because: [
      asked.length > 0 ? say.askedFor(asked) : "",
      ...[...ready].map(([gas, cells]) => say.inCaseGives(cells, gas)),
      asked.length > 0 ? "" : say.NOT_ASKED,
    ]
      .filter(Boolean)
      .join("; "),
  }));
}

function capped(salts: readonly string[]): string[] {
  if (salts.length <= LISTED + 1) return [...salts];
  return [...salts.slice(0, LISTED), say.andMore(salts.length - LISTED)];
}
