/** A step of the procedure as an instruction: "Add sodium hydroxide (1 mol/dm3) drop by drop, shaking, until in excess." */
import { GAS_SAFETY } from "../../engine/constants/gas-safety.ts";
import type { PlannedReagent } from "../../engine/planning/bench-plan.ts";
import type { Duration, Gas, GasTest, Part, Sample, Step, Test } from "../../engine/practical.ts";
import { list } from "../sentence.ts";

/** What a step needs to be worded. */
export interface Bench {
  reagents: readonly PlannedReagent[];
  /** What is taken: see `wordSample`. */
  sample: string;
}

const time = ({ min }: Duration) => (min < 1 ? `${Math.round(min * 60)} s` : `${min} min`);
const figure = (amount: number) => String(Math.round(amount * 1000) / 1000);

const GAS_TEST: Record<GasTest, string> = {
  "damp red litmus": "Hold damp red litmus paper at the mouth of the tube, not touching the glass.",
  "damp blue litmus": "Hold damp blue litmus paper at the mouth of the tube, not touching the glass.",
  limewater:
    "Draw the gas up with a dropper just above the liquid and bubble it through limewater; do this two or three times.",
  "glowing splint": "Put a glowing splint into the mouth of the tube.",
  "lighted splint": "Hold a lighted splint at the mouth of the tube.",
  "acidified manganate(VII) paper":
    "Hold a paper wetted with acidified potassium manganate(VII) at the mouth of the tube.",
};

function reagent(step: Extract<Step, { do: "add" }>, { reagents }: Bench): string {
  const planned = reagents.find(({ id }) => id === step.reagent);
  const name = planned?.name ?? step.reagent;
  const strength = step.at ? `${figure(step.at.molPerDm3)} mol/dm3` : planned?.concentration;
  return strength && !name.includes("mol/dm") ? `${name} (${strength})` : name;
}

/** One step as a whole sentence. */
export function wordStep(step: Step, bench: Bench): string {
  switch (step.do) {
    case "take":
      return "volume" in step
        ? `Take ${figure(step.volume.cm3)} cm3 of ${bench.sample} into a clean tube.`
        : `Take ${figure(step.mass.g)} g of ${bench.sample} into a clean, dry tube.`;
    case "add": {
      const what = reagent(step, bench);
      const { amount } = step;
      if ("inExcess" in amount) return `Add ${what} drop by drop, shaking, until in excess.`;
      if ("drops" in amount) return `Add ${amount.drops} ${amount.drops === 1 ? "drop" : "drops"} of ${what}; shake.`;
      if ("volume" in amount) return `Add ${figure(amount.volume.cm3)} cm3 of ${what}; shake.`;
      return `Add ${amount.pieces} small ${amount.pieces === 1 ? "piece" : "pieces"} of ${what}.`;
    }
    case "shake":
      return "Shake the tube gently.";
    case "warm":
      return "Warm the tube gently; keep it moving, its mouth away from everyone.";
    case "boil":
      return `Boil gently for ${time(step.time)}; keep the tube moving, its mouth away from everyone.`;
    case "stand":
      return `Let it stand for ${time(step.time)}.`;
    case "filter":
      return `Filter, and keep the ${step.keep}.`;
    case "heat solid":
      return `Heat the solid ${step.how}, the mouth of the tube away from everyone. Look at it hot, and again when cold.`;
    case "test gas":
      return GAS_TEST[step.with];
    case "flame":
      return "Do a flame test: a little on a clean wire, held at the edge of a roaring flame.";
  }
}

/** A test in a few words for a table: the paper's own, or its reagents and actions. */
export function wordTest(test: Test, bench: Bench): string {
  if (test.says) return test.says;
  const words = test.steps.flatMap((step): string[] => {
    switch (step.do) {
      case "add": {
        const name = bench.reagents.find(({ id }) => id === step.reagent)?.name ?? step.reagent;
        if ("inExcess" in step.amount) return [`${name} in excess`];
        return ["drops" in step.amount ? `${name}, ${step.amount.drops} drops` : name];
      }
      case "warm":
        return ["warmed"];
      case "boil":
        return ["boiled"];
      case "stand":
        return ["left to stand"];
      case "filter":
        return [`filtered, the ${step.keep}`];
      case "heat solid":
        return [`the solid heated ${step.how}`];
      case "flame":
        return ["flame test"];
      default:
        return [];
    }
  });
  return words.length > 0 ? words.join(", then ") : "look";
}

/** "solution P", "each solution (P and Q)": what a part takes of its samples. */
export function wordSample(part: Part, samples: readonly Sample[]): string {
  const on = samples.filter(({ label }) => !part.samples || part.samples.includes(label));
  const form = part.from ?? (on.every(({ given }) => given === "solid") ? "solid" : "solution");
  return on.length === 1 ? `${form} ${on[0].label}` : `each ${form} (${list(on.map(({ label }) => label))})`;
}

/** The name of a gas given by its formula; a formula the engine has no row for passes as it is. */
export const gasName = (formula: string): string =>
  Object.hasOwn(GAS_SAFETY, formula) ? GAS_SAFETY[formula as Gas].name : formula;
