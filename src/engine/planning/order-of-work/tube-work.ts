/** What hands and burner do for each tube, from the steps of the paper and the durations of the trade. */
import type { DURATIONS } from "../../constants/durations.ts";
import { cellsOf } from "../../practical/cells.ts";
import type { Paper, Part, Step } from "../../practical.ts";
import { heatsLiquid, heatsSolid, isFlameOnly, stepsOf } from "../tube-choice.ts";
import type { TubeWork, Turn } from "./bench-work.ts";
import { lasting, quarters } from "./quarter-minutes.ts";

/** Every tube of the practical, part by part and within a part in the order of the samples: as a reader would begin them. */
export function tubeWorkOf({ samples, parts }: Pick<Paper, "samples" | "parts">): TubeWork[] {
  const cells = cellsOf(parts);
  return parts.flatMap((part, place) => {
    const turns = turnsOf(
      part,
      cells.filter((cell) => cell.part === part).map(({ id }) => id),
    );
    const tubes = tubesOf(part);
    return samples
      .filter(({ label }) => part.samples?.includes(label) ?? true)
      .map(({ label }) => ({ sample: label, part: place, turns, ...(tubes && { tubes }) }));
  });
}

/** The tubes a part occupies for one sample, where they can be rinsed and used again. */
function tubesOf(part: Part): TubeWork["tubes"] {
  const steps = stepsOf(part);
  const hot = steps.some(heatsLiquid);
  // A tube for a heated solid must be dry, and a rinsed one is not; a flame test needs none.
  if (isFlameOnly(part) || (!hot && steps.some(heatsSolid))) return undefined;
  return { kind: hot ? "boiling tube" : "test-tube", count: steps.some(({ do: verb }) => verb === "filter") ? 2 : 1 };
}

type Action = keyof typeof DURATIONS;

/** What hands do in a step, by the durations of the trade. Nothing for one in which the tube is left alone. */
function actionsIn(step: Step): Action[] {
  switch (step.do) {
    case "take":
      return ["volume" in step ? "takeSolution" : "takeSolid"];
    case "add":
      if ("inExcess" in step.amount) return ["addInExcess"];
      if ("pieces" in step.amount) return ["addPieces"];
      return ["drops" in step.amount ? "addDrops" : "addVolume"];
    case "shake":
      return ["shake"];
    case "warm":
      return ["warm"];
    case "boil":
      return ["bringToBoil"];
    case "heat solid":
      return [step.how === "gently" ? "heatGently" : "heatStrongly"];
    case "test gas":
      return [step.with === "limewater" ? "gasByDropper" : "gasAtMouth"];
    case "lead through":
      return ["leadThrough"];
    case "indicator":
      return ["indicator"];
    case "flame":
      return ["cleanWire", "flame"];
    case "filter":
      return ["pourOnFilter"];
    case "wash":
      return ["wash"];
    case "cool":
    case "stand":
      return [];
  }
}

/** How long hands are busy with a step. A tube over a flame is held and kept moving: they are never free of it. */
const workOf = (step: Step): number =>
  actionsIn(step).reduce((sum, action) => sum + lasting(action), step.do === "boil" ? quarters(step.time.min) : 0);

/** The durations that decide this paper's order of work, in the order in which they are first needed. */
export function durationsIn(parts: readonly Part[]): Action[] {
  const steps = parts.flatMap(stepsOf);
  const cools = steps.some((step) => step.do === "cool" || heatsSolid(step));
  const filters = steps.some((step) => step.do === "filter");
  return [
    ...new Set<Action>([
      "plan",
      ...(parts.some((part) => stepsOf(part)[0].do !== "take") ? (["takeSolution"] as const) : []),
      ...steps.flatMap(actionsIn),
      ...(cools ? (["cool"] as const) : []),
      ...(filters ? (["runThrough"] as const) : []),
      "writeDown",
      "rinse",
      "clearUp",
    ]),
  ];
}

/** The wait that begins when the step is done. */
function waitAfter(step: Step): { wait: number; waitsTo: Turn["waitsTo"] } | undefined {
  if (step.do === "cool") return { wait: lasting("cool"), waitsTo: "cool" };
  if (step.do === "stand") return { wait: quarters(step.time.min), waitsTo: "stand" };
  if (step.do === "filter") return { wait: lasting("runThrough"), waitsTo: "drip through the filter" };
  return undefined;
}

const needsBurner = (step: Step): boolean => heatsLiquid(step) || heatsSolid(step) || step.do === "flame";
const testsGas = (step: Step): boolean => step.do === "test gas" || step.do === "lead through";

/**
 * The turns of one tube. A turn ends where the tube is left alone, where a line of the record is written, and before the burner comes in; a
 * test of a gas is never parted from what set the gas free, so a heated solid cools after it.
 * @param cells labels of the part's tests
 */
function turnsOf(part: Part, cells: readonly string[]): Turn[] {
  const turns: Turn[] = [];
  let open: Turn | undefined;
  /** A heated solid is looked at hot and again when cold: it still has to cool. */
  let hot = false;
  const begin = (cell: string, burner: boolean): Turn => {
    open = { cells: [cell], steps: [], work: 0, burner, wait: 0 };
    turns.push(open);
    return open;
  };
  const work = (time: number, cell: string, step?: Step) => {
    const burner = step !== undefined && needsBurner(step);
    const turn = open && (open.burner || !burner) ? open : begin(cell, burner);
    if (turn.cells.at(-1) !== cell) turn.cells.push(cell);
    turn.work += time;
    if (step) turn.steps.push(step);
  };
  const leave = (wait: number, waitsTo: Turn["waitsTo"], cell: string) => {
    if (turns.length === 0) work(0, cell);
    const last = turns[turns.length - 1];
    last.wait += wait;
    last.waitsTo = waitsTo;
    open = undefined;
    hot = false;
  };
  part.tests.forEach(({ steps }, index) => {
    const cell = cells[index];
    if (testsGas(steps[0])) open = turns.at(-1);
    // Where the paper does not say so, a portion of the sample is taken all the same.
    if (index === 0 && steps[0].do !== "take") begin(cell, needsBurner(steps[0])).work = lasting("takeSolution");
    for (const step of steps) {
      if (hot && !heatsSolid(step) && !testsGas(step)) leave(lasting("cool"), "cool", cell);
      const time = workOf(step);
      if (time > 0) work(time, cell, step);
      hot ||= heatsSolid(step);
      const left = waitAfter(step);
      if (left) leave(left.wait, left.waitsTo, cell);
    }
    const gasNext = index + 1 < part.tests.length && testsGas(part.tests[index + 1].steps[0]);
    if (hot && !gasNext) leave(lasting("cool"), "cool", cell);
    work(lasting("writeDown"), cell);
    open = undefined;
  });
  return turns;
}
