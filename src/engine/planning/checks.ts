/** What is checked at the bench before the first test, in the order in which it is done. */
import { CHECKS, GAS_KIT } from "#words/bench.ts";
import type { Part } from "../practical.ts";
import { DELIVERY, type GasKit } from "./gas-plan.ts";
import { heatsLiquid, heatsSolid, stepsOf } from "./tube-choice.ts";

/** `gasTests`: the ways of testing gases that stand ready, asked for or in case. */
export function checksFor(parts: readonly Part[], gasTests: readonly GasKit[]): string[] {
  const steps = parts.flatMap(stepsOf);
  const dry = steps.some(heatsSolid);
  const heats = steps.some((step) => heatsLiquid(step) || heatsSolid(step));
  const burner = heats || steps.some((step) => step.do === "flame") || gasTests.some(isSplint);
  const checks: (string | false)[] = [
    CHECKS.read,
    CHECKS.goggles,
    dry ? CHECKS.dryTubes : CHECKS.tubes,
    burner && CHECKS.burner(heats),
    CHECKS.labels,
    CHECKS.marks,
    gasTests.length > 0 && CHECKS.gases(kitOf(gasTests), gasTests.some(isPaper)),
    CHECKS.waste,
    CHECKS.keepBack,
  ];
  return checks.filter((check): check is string => check !== false);
}

const isPaper = (test: GasKit): boolean => test.endsWith("litmus") || test.endsWith("paper");
const isSplint = (test: GasKit): boolean => test.endsWith("splint");

/** No more than is needed. */
function kitOf(gasTests: readonly GasKit[]): string[] {
  return [
    gasTests.some(isPaper) && GAS_KIT.papers,
    gasTests.some(isSplint) && GAS_KIT.splints,
    gasTests.some((test) => test.startsWith("rod")) && GAS_KIT.rods,
    gasTests.includes("anhydrous copper(II) sulfate") && GAS_KIT.copperSulfate,
    gasTests.some((test) => test === "limewater" || test === DELIVERY) && GAS_KIT.limewater,
    gasTests.includes(DELIVERY) && GAS_KIT.delivery,
  ].filter((one): one is string => one !== false);
}
