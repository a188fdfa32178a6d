/** From what heating does to a solid to what is said of it: residue hot and cold, coloured fumes, drops, a solid on the cool wall, gases. */
import { GASES } from "../practical/gases.ts";
import type { GasSeen, GasTest, Observation } from "../practical.ts";
import { isFaint, signOf } from "./gas-signs.ts";
import type { HeatOutcome } from "./heat/heat-solid.ts";

/** What a gas test held over a heated solid shows, the likeliest first; false when it shows nothing. A trace may or may not be found. */
export function gasOverHeated({ gases, traces, damp }: HeatOutcome, test: GasTest): (GasSeen | false)[] {
  const plain = signOf(test, gases);
  if (plain) return isFaint(test, plain.formula) ? [plain, false] : [plain];
  const faint = signOf(
    test,
    GASES.filter((gas) => gases.includes(gas) || traces.includes(gas) || (damp && gas === "H2O")),
  );
  return faint ? [false, faint] : [false];
}

/**
 * The solid's part of the observation, the likeliest first. A residue that looks the same as the solid taken is still a residue to record;
 * of a damp one drops may be seen, and a little of a salt may settle, or fume white, or not.
 */
export function heatReadings(outcome: HeatOutcome): Observation[] {
  const { residue, vapours, sublimate, maySettle, mayFume, gases, damp } = outcome;
  const [fumes] = vapours;
  const drops = { droplets: true as const };
  const reading: Observation = {
    residue: residue ? { hot: residue.hot, cold: residue.cold } : false,
    ...(fumes && { fumes }),
    ...(sublimate && { sublimate: sublimate.colour }),
    ...(gases.includes("H2O") && drops),
  };
  return [
    reading,
    ...(damp && !reading.droplets ? [{ ...reading, ...drops }] : []),
    ...(maySettle ? [{ ...reading, sublimate: maySettle.colour }] : []),
    ...(mayFume && !fumes ? [{ ...reading, fumes: "white" as const }] : []),
  ];
}
