/** What is checked at the bench before the first test, in the order in which it is done. */
import type { Part } from "../practical.ts";
import { heatsLiquid, heatsSolid, stepsOf } from "./tube-choice.ts";

export function checksFor(parts: readonly Part[], testsGases: boolean): string[] {
  const steps = parts.flatMap(stepsOf);
  const dry = steps.some(heatsSolid);
  const heats = steps.some((step) => heatsLiquid(step) || heatsSolid(step));
  const burner = heats || steps.some((step) => step.do === "flame") || testsWithSplint(steps);
  const checks: (string | false)[] = [
    "Read all the tests to the end before you begin.",
    "Goggles on, and on until everything is washed.",
    dry
      ? "Tubes clean, rinsed with deionised water; the tubes for heating solids also dry."
      : "Tubes clean, rinsed with deionised water.",
    burner && `Burner and lighter tried${heats ? ", holder beside the burner" : ""}.`,
    "Each tube labelled with sample and part before it is filled, left to right in the order of the tests.",
    "Fill marks put on the tubes.",
    testsGases && "Papers, splints and limewater for the gases within reach, not yet damp.",
    "Waste beaker in place.",
    "A third of each sample kept back until the report is written.",
  ];
  return checks.filter((check): check is string => check !== false);
}

const testsWithSplint = (steps: ReturnType<typeof stepsOf>): boolean =>
  steps.some((step) => step.do === "test gas" && step.with.endsWith("splint"));
