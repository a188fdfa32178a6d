/** From a trace to what is said of gases: bubbles, and what each test at the mouth of the tube shows. */
import { VISIBILITY } from "../constants/visibility.ts";
import { HARMFUL_GASES } from "../practical/gases.ts";
import type { Gas, GasSeen, GasTest, GivenOff } from "../practical.ts";
import { signOf } from "./gas-signs.ts";
import { gasOverHeated } from "./read-heat.ts";
import type { GasTestSeen, TestTrace } from "./trace.ts";

/** Gas drawn from above the liquid into limewater, cm3 (a dropper filled twice or three times; common practice, no source). */
const DRAWN_CM3 = 5;
/** Within this factor of a limit either reading is accepted. */
export const DOUBTFUL = 3;

/** Whether bubbles are seen: yes, no, or either when they come only slowly, as the tube warms. A metal fizzes on, hot or not. */
export function effervescenceReadings(trace: TestTrace): boolean[] {
  const cm3 = [...trace.bubbles.values()].reduce((sum, volume) => sum + volume, 0);
  const hydrogen = trace.bubbles.get("H2(g)") ?? 0;
  const atOnce = cm3 - hydrogen - Math.max(0, trace.heatedBubbles - hydrogen);
  if (Math.max(hydrogen, atOnce) >= VISIBILITY.bubbles.value) return [true];
  return cm3 >= VISIBILITY.bubbles.value ? [false, true] : [false];
}

/**
 * Brown fumes over a liquid: nitrogen monoxide browns in the air of the tube. Seen, not seen (undefined), or either, the likeliest first.
 */
export function brownFumesReadings({ bubbles }: TestTrace): ("brown" | undefined)[] {
  const cm3 = bubbles.get("NO(g)") ?? 0;
  if (cm3 >= VISIBILITY.brownFumes.value) return ["brown", undefined];
  return cm3 >= VISIBILITY.brownFumes.value / DOUBTFUL ? [undefined, "brown"] : [undefined];
}

/**
 * What a gas test could be recorded as, the likeliest first; `false` = tested and not found. None where nitrogen dioxide or chlorine meets
 * a test that no table says its sign in.
 */
export function gasReadings(seen: GasTestSeen): (GasSeen | false)[] {
  if (seen.heated) return gasOverHeated(seen.heated, seen.test);
  const { NH3, SO2 } = seen.atm;
  const NO2 = seen.left.NO / VISIBILITY.nitrogenMonoxide.value;
  const Cl2 = seen.atm.Cl2 / VISIBILITY.chlorine.value;
  switch (seen.test) {
    case "damp red litmus":
      return strongest(seen.test, { NH3: NH3 / VISIBILITY.ammonia.value, Cl2 });
    case "rod with hydrochloric acid":
      return judged(NH3 / VISIBILITY.ammonia.value, signOf(seen.test, ["NH3"]));
    case "damp blue litmus": {
      const plain = strongest(seen.test, { SO2: SO2 / VISIBILITY.sulfurDioxide.value, NO2, Cl2 });
      const faint = signOf(seen.test, ["CO2"]);
      const some = seen.left.CO2 >= VISIBILITY.carbonDioxideOnLitmus.value;
      return some && faint && plain.every((gas) => !gas) ? [faint, false] : plain;
    }
    case "acidified manganate(VII) paper":
    case "acidified dichromate(VI) paper":
      // Nitrogen oxides reduce both papers too, at a pace of their own.
      if (NO2 >= 1 / DOUBTFUL) return [];
      return judged(SO2 / VISIBILITY.sulfurDioxide.value, signOf(seen.test, ["SO2"]));
    case "limewater": {
      const carbon = seen.left.CO2 + seen.atm.CO2 * DRAWN_CM3;
      const sulfur = seen.left.SO2 + SO2 * DRAWN_CM3;
      const greater = sulfur > carbon ? "SO2" : "CO2";
      return judged(Math.max(carbon, sulfur) / VISIBILITY.limewater.value, signOf(seen.test, [greater]));
    }
    case "lighted splint":
      return judged(seen.left.H2 / VISIBILITY.splint.value, signOf(seen.test, ["H2"]));
    case "glowing splint":
      return judged(seen.left.O2 / VISIBILITY.splint.value, signOf(seen.test, ["O2"]));
    case "rod with ammonia":
      // Dilute acid gives off no hydrogen chloride; chlorine and nitrogen dioxide smoke with ammonia, how much nobody says.
      return Math.max(NO2, Cl2) >= 1 / DOUBTFUL ? [] : [false];
    // Over a liquid a test for water says nothing.
    case "anhydrous copper(II) sulfate":
    case "cobalt(II) chloride paper":
      return [false];
  }
}

/** The test judged by the gas that stands highest above its limit; `timesLimit`: gases with their own sign in the test. */
function strongest(test: GasTest, timesLimit: Partial<Record<Gas, number>>): (GasSeen | false)[] {
  const [gas, times] = (Object.entries(timesLimit) as [Gas, number][]).reduce((most, one) =>
    one[1] > most[1] ? one : most,
  );
  return judged(times, signOf(test, [gas]));
}

function judged(timesLimit: number, gas: GasSeen | undefined): (GasSeen | false)[] {
  if (!gas) return [false];
  if (timesLimit >= DOUBTFUL) return [gas];
  if (timesLimit >= 1) return [gas, false];
  if (timesLimit >= 1 / DOUBTFUL) return [false, gas];
  return [false];
}

/**
 * Gases given off in an amount that can be shown, felt or can harm. Ammonia and the halogens count when the tube is hot: cold, they mostly
 * stay in the liquid, and chlorine water carries its own caution. Chlorine counts as well where a test of gases would find it. Over
 * a heated solid nothing harmful is left out, though no test of a practical is for it or only a trace of it comes.
 */
export function gasesGivenOff(trace: TestTrace): GivenOff[] {
  if (trace.heat) {
    const { gases, otherGases, traces } = trace.heat;
    const harmful = HARMFUL_GASES.filter((gas) => otherGases.includes(gas));
    return [...new Set<GivenOff>([...gases.filter((gas) => gas !== "H2O"), ...harmful, ...traces])];
  }
  const gases: GivenOff[] = trace.hydrogenSulfide ? ["H2S"] : [];
  const bubbled = (id: string) => (trace.bubbles.get(id) ?? 0) >= VISIBILITY.bubbles.value;
  const chlorine = Math.max(trace.hot.Cl2, ...trace.gasTests.map(({ atm }) => atm.Cl2));
  if (trace.hot.NH3 >= VISIBILITY.ammonia.value) gases.push("NH3");
  if (chlorine >= VISIBILITY.chlorine.value) gases.push("Cl2");
  if (trace.hot.Br2 >= VISIBILITY.bromine.value) gases.push("Br2");
  if (trace.hot.I2 >= VISIBILITY.iodine.value) gases.push("I2");
  if (bubbled("SO2(g)") || trace.sulfurDioxide >= VISIBILITY.sulfurDioxide.value) gases.push("SO2");
  if (bubbled("CO2(g)")) gases.push("CO2");
  if (bubbled("H2(g)")) gases.push("H2");
  if (bubbled("O2(g)")) gases.push("O2");
  if (bubbled("NO(g)")) gases.push("NO2");
  return gases;
}
