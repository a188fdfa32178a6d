/** One tube of the plan: which glass one part takes for one sample, and how high the liquid stands after each addition. */
import * as say from "#words/bench.ts";
import { reagentName } from "#words/steps.ts";
import { NOTHING_POURED, type Poured, pouredAfter, volumeAdded } from "../bench/portion.ts";
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import type { Reagent } from "../constants/reagents.ts";
import type { Addition, GivenSample, Part, Step } from "../practical.ts";
import type { PlannedTube } from "./bench-plan.ts";
import { heatedLiquidLimit, heatedSolidLimit, tooFullToHeat, tooFullToShake, tooMuchSolidToHeat } from "./filling.ts";
import { depthOfVolume } from "./geometry.ts";
import { printed, tidy } from "./portions.ts";
import { formTaken, type Glass, heatsLiquid, heatsSolid, isFlameOnly, sizeFor, stepsOf } from "./tube-choice.ts";

/** One addition of a reagent to one tube. No volume and no piece: the amount does not suit the reagent. */
export interface ReagentUse {
  id: string;
  /** mol/dm3, when the paper asks for its own concentration. */
  molPerDm3?: number;
  cm3: number;
  pieces: number;
  inExcess: boolean;
  /** Liquid that stands for the sample in this tube, cm3. */
  sampleCm3: number;
  /** Acid of the reagents before it, mmol of H+; below 0 for alkali. */
  acid: number;
}

/** What one part needs for one sample. `tubes` is empty for a flame test, and holds two or more when the part filters. */
export interface TubePlan {
  tubes: PlannedTube[];
  uses: ReagentUse[];
  solutionCm3: number;
  solidG: number;
  /** Acid of the reagents that is left in it at the end, mmol of H+; below 0 for alkali. */
  acid: number;
  warnings: string[];
}

/** The tubes for `part` on `sample`. `cells`: the labels of the part's tests, in order; `reagentOf` looks a reagent up by its id. */
export function planTube(
  part: Part,
  cells: readonly string[],
  sample: GivenSample,
  glass: Glass,
  reagentOf: (id: string) => Reagent,
): TubePlan {
  const plan: TubePlan = { tubes: [], uses: [], solutionCm3: 0, solidG: 0, acid: 0, warnings: [] };
  const warn = (text: string | undefined) => {
    if (text) plan.warnings.push(say.inPart(part.label, text));
  };
  const size = sizeFor(part, glass);
  const steps = stepsOf(part);
  const inTube = !isFlameOnly(part);
  if (inTube && steps.some(heatsSolid) && steps.some(heatsLiquid)) {
    warn(say.HARD_GLASS);
  }

  let tube: PlannedTube;
  let cm3 = 0;
  let poured = NOTHING_POURED;
  const fresh = (suffix = "") => {
    tube = { label: `${sample.label} ${part.label}${suffix}`, sample: sample.label, part: part.label, size, marks: [] };
    if (inTube) plan.tubes.push(tube);
  };
  const rise = (byCm3: number, what: string, excessOf?: string) => {
    cm3 = tidy(cm3 + byCm3);
    const excess = excessOf === undefined ? {} : { excess: { reagent: excessOf, cm3: byCm3 } };
    if (inTube) tube.marks.push({ cm3, depthMm: depthOfVolume(cm3, size), what, ...excess });
  };
  const takeSolution = (volumeCm3: number) => {
    plan.solutionCm3 = tidy(plan.solutionCm3 + volumeCm3);
    rise(volumeCm3, say.ofSample(printed(volumeCm3), sample.label));
    if (sample.given === "solid") {
      warn(say.givenAsSolid(printed(volumeCm3), sample.label));
    }
  };
  const takeSolid = (g: number) => {
    plan.solidG = tidy(plan.solidG + g);
    if (inTube) tube.solidG = tidy((tube.solidG ?? 0) + g);
    if (sample.given === "solution") {
      warn(say.givenAsSolution(printed(g), sample.label));
    }
  };
  const perform = (step: Step, cell: string) => {
    if (step.do === "take") {
      if ("volume" in step) takeSolution(step.volume.cm3);
      else takeSolid(step.mass.g);
    } else if (step.do === "add") {
      const reagent = reagentOf(step.reagent);
      const use = useOf(step, reagent, poured);
      plan.uses.push(use);
      if (use.cm3 > 0)
        rise(
          use.cm3,
          wordAddition(step.amount, reagentName(reagent.id, reagent.name)),
          use.inExcess ? use.id : undefined,
        );
    } else if (heatsLiquid(step)) {
      tube.heatingLimitCm3 = heatedLiquidLimit(size);
      warn(tooFullToHeat(cm3, tube.solidG ?? 0, size, cell));
    } else if (heatsSolid(step)) {
      tube.heatingLimitCm3 ??= heatedSolidLimit(size);
      warn(tooMuchSolidToHeat(tube.solidG ?? 0, size, cell));
    } else if (step.do === "filter") {
      fresh(` ${say.KEPT[step.keep]}`);
      if (step.keep === "residue") cm3 = 0;
      else rise(0, say.FILTRATE);
    }
    poured = pouredAfter(poured, step);
  };

  fresh();
  if (!steps.some((step) => step.do === "take")) {
    const form = formTaken(part, sample);
    const amount = unstated(form, inTube);
    perform({ do: "take", ...(form === "solid" ? { mass: { g: amount } } : { volume: { cm3: amount } }) }, "");
    const unit = form === "solid" ? "g" : "cm3";
    if (inTube) warn(say.noAmount(`${printed(amount)} ${unit}`));
  }
  part.tests.forEach((test, index) => {
    for (const step of test.steps) perform(step, cells[index]);
  });
  plan.acid = poured.acid;
  for (const one of plan.tubes) warn(tooFullToShake(Math.max(0, ...one.marks.map((mark) => mark.cm3)), size));
  return plan;
}

/** Amount of a sample where the paper states none: cm3 of a solution, g of a solid. */
function unstated(form: "solid" | "solution", inTube: boolean): number {
  if (form === "solid") return BENCH_PRACTICE[inTube ? "spatulaMeasure" : "flameSolid"].value;
  return BENCH_PRACTICE[inTube ? "portion" : "flameSolution"].value;
}

function useOf(step: Extract<Step, { do: "add" }>, { kind }: Reagent, before: Poured): ReagentUse {
  const { reagent: id, amount, at } = step;
  const dry = kind === "solid" || kind === "paper";
  return {
    id,
    molPerDm3: at?.molPerDm3,
    cm3: dry ? 0 : tidy(volumeAdded(step, before)),
    pieces: dry && "pieces" in amount ? amount.pieces : 0,
    inExcess: "inExcess" in amount,
    // Of a solid sample, what it was dissolved in stands for the sample.
    sampleCm3: before.sampleCm3 || before.cm3,
    acid: before.acid,
  };
}

function wordAddition(amount: Addition, reagent: string): string {
  if ("drops" in amount) return say.drops(amount.drops, reagent);
  if ("volume" in amount) return say.volume(printed(amount.volume.cm3), reagent);
  return say.inExcess(reagent);
}

/** A tube that what was filtered goes into, and not the sample itself. */
export const isFiltered = ({ label }: Pick<PlannedTube, "label">): boolean =>
  Object.values(say.KEPT).some((kept) => label.endsWith(` ${kept}`));
