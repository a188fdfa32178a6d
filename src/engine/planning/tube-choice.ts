/** Which glass a part is done in, and which form of the sample goes into it. */
import { BOILING_TUBES, HARD_GLASS_TUBE, TEST_TUBES } from "../constants/glassware.ts";
import type { GivenSample, Part, Step } from "../practical.ts";
import type { TubeSize } from "./bench-plan.ts";

/** Sizes chosen for cold and for heated solutions. */
export interface Glass {
  testTube: TubeSize;
  boilingTube: TubeSize;
}

/** The tubes with these ids. Throws a RangeError that names the ids there are. */
export function glassOf(choice: { testTube: string; boilingTube: string }): Glass {
  const find = (sizes: readonly TubeSize[], id: string, entry: string) => {
    const size = sizes.find((one) => one.id === id);
    if (size) return size;
    throw new RangeError(
      `bench plan, ${entry}: found the size "${id}", expected one of ${sizes.map((one) => one.id).join(", ")}`,
    );
  };
  return {
    testTube: find(TEST_TUBES, choice.testTube, "testTube"),
    boilingTube: find(BOILING_TUBES, choice.boilingTube, "boilingTube"),
  };
}

export const stepsOf = (part: Part): Step[] => part.tests.flatMap((test) => test.steps);
export const heatsLiquid = (step: Step): boolean => step.do === "warm" || step.do === "boil";
export const heatsSolid = (step: Step): boolean => step.do === "heat solid";

/** True when the part is done on a wire and needs no tube. */
export function isFlameOnly(part: Part): boolean {
  const steps = stepsOf(part);
  return steps.some((step) => step.do === "flame") && steps.every((step) => step.do === "flame" || step.do === "take");
}

/** A boiling tube as soon as a solution is warmed (the rule of Cambridge practical papers), hard glass for a heated solid. */
export function sizeFor(part: Part, glass: Glass): TubeSize {
  const steps = stepsOf(part);
  if (steps.some(heatsLiquid)) return glass.boilingTube;
  return steps.some(heatsSolid) ? HARD_GLASS_TUBE : glass.testTube;
}

/** The form of the sample a part uses when the paper takes no stated amount: of both, the solid for dry tests. */
export function formTaken(part: Part, sample: GivenSample): "solid" | "solution" {
  if (sample.given !== "both") return sample.given;
  if (part.from) return part.from;
  return stepsOf(part).some((step) => heatsSolid(step) || step.do === "flame") ? "solid" : "solution";
}
