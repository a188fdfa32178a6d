/** A line of the record and what a reader looks for there. */
import type { Cell, Step } from "../../practical.ts";

/**
 * - `halide`: silver nitrate is added; `which halide`: ammonia on what silver nitrate gave.
 * - `sulfate`: a barium salt is added.
 * - `nitrate`: aluminium foil in warm alkali, the gas tried with litmus.
 * - `carbonate`: acid is added and the gas brought to limewater.
 * - `hydroxide`: alkali is added to the sample alone.
 */
export type Aim = "halide" | "which halide" | "sulfate" | "nitrate" | "carbonate" | "hydroxide";

export interface Line {
  cell: Cell;
  aim: Aim;
}

export const SILVER = ["AgNO3(aq)"];
export const BARIUM = ["BaCl2(aq)", "Ba(NO3)2(aq)"];
export const ALKALIS = ["NaOH(aq)", "NH3(aq)"];
const AMMONIA = ["NH3(aq)"];
const ACIDS = ["HCl(aq)", "HNO3(aq)", "H2SO4(aq)"];
const FOIL = ["Al(s)"];

const adds = (steps: readonly Step[], reagents: readonly string[]): boolean =>
  steps.some((step) => step.do === "add" && reagents.includes(step.reagent));

const isLimewater = (step: Step): boolean =>
  step.do === "lead through" || (step.do === "test gas" && step.with === "limewater");

/** What is looked for in a cell; undefined where no false result is known of. */
export function lineOf(cell: Cell): Line | undefined {
  const { steps } = cell.test;
  const before = cell.part.tests.slice(0, cell.index).flatMap((test) => test.steps);
  const all = [...before, ...steps];
  if (adds(steps, SILVER)) return { cell, aim: "halide" };
  if (adds(steps, BARIUM)) return { cell, aim: "sulfate" };
  if (adds(steps, AMMONIA) && adds(before, SILVER)) return { cell, aim: "which halide" };
  if (adds(all, FOIL) && steps.some((step) => step.do === "test gas" && step.with === "damp red litmus"))
    return { cell, aim: "nitrate" };
  if (adds(all, ACIDS) && steps.some(isLimewater)) return { cell, aim: "carbonate" };
  if (adds(steps, ALKALIS) && !adds(before, [...SILVER, ...BARIUM])) return { cell, aim: "hydroxide" };
  return undefined;
}

/** True when acid follows in the same tube, in a later line: then that line tells the precipitates apart. */
export const acidFollows = ({ cell }: Line): boolean =>
  adds(
    cell.part.tests.slice(cell.index + 1).flatMap((test) => test.steps),
    ACIDS,
  );
