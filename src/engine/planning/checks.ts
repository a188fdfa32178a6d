/** What is checked at the bench before the first test, in the order in which it is done. */
import type { Part } from "../practical.ts";
import { listed } from "../wording/listed.ts";
import { DELIVERY, type GasKit } from "./gas-plan.ts";
import { heatsLiquid, heatsSolid, stepsOf } from "./tube-choice.ts";

/** `gasTests`: the ways of testing gases that stand ready, asked for or in case. */
export function checksFor(parts: readonly Part[], gasTests: readonly GasKit[]): string[] {
  const steps = parts.flatMap(stepsOf);
  const dry = steps.some(heatsSolid);
  const heats = steps.some((step) => heatsLiquid(step) || heatsSolid(step));
  const burner = heats || steps.some((step) => step.do === "flame") || gasTests.some(isSplint);
  const checks: (string | false)[] = [
    "Read all the tests to the end before you begin.",
    "Goggles on, and on until everything is washed.",
    dry
      ? "Tubes clean, rinsed with deionised water; the tubes for heating solids also dry."
      : "Tubes clean, rinsed with deionised water.",
    burner && `Burner and lighter tried${heats ? ", holder beside the burner" : ""}.`,
    "Each tube labelled with sample and part before it is filled, left to right in the order of the tests.",
    "Fill marks put on the tubes.",
    gasTests.length > 0 &&
      `${kitOf(gasTests)} for the gases within reach${gasTests.some(isPaper) ? ", papers not yet damp" : ""}.`,
    "Waste bottles and beaker in place, and known: see where each tube goes.",
    "A third of each sample kept back until the report is written.",
  ];
  return checks.filter((check): check is string => check !== false);
}

const isPaper = (test: GasKit): boolean => test.endsWith("litmus") || test.endsWith("paper");
const isSplint = (test: GasKit): boolean => test.endsWith("splint");

/** "Papers, splints and limewater": no more than is needed. */
function kitOf(gasTests: readonly GasKit[]): string {
  const kit = [
    gasTests.some(isPaper) && "papers",
    gasTests.some(isSplint) && "splints",
    gasTests.some((test) => test.startsWith("rod")) && "rods",
    gasTests.includes("anhydrous copper(II) sulfate") && "anhydrous copper(II) sulfate",
    gasTests.some((test) => test === "limewater" || test === DELIVERY) && "limewater",
    gasTests.includes(DELIVERY) && "delivery tubes",
  ].filter((one): one is string => one !== false);
  const words = listed(kit, "and");
  return words[0].toUpperCase() + words.slice(1);
}
