/** A step of the procedure as an instruction: "Add sodium hydroxide (1 mol/dm3) drop by drop, shaking, until in excess." */
import { BENCH_PRACTICE } from "../../engine/constants/bench-practice.ts";
import { GAS_SAFETY } from "../../engine/constants/gas-safety.ts";
import { INDICATORS, type Indicator } from "../../engine/constants/indicators.ts";
import type { BenchPlan, PlannedReagent } from "../../engine/planning/bench-plan.ts";
import type { Duration, GasTest, GivenOff, GivenSample, Part, Step, Test } from "../../engine/practical.ts";
import { list } from "../sentence.ts";

/** A reagent as it is named. */
export type Bottle = Pick<PlannedReagent, "id" | "name" | "concentration">;

/** What a step needs to be worded. */
export interface Bench {
  reagents: readonly Bottle[];
  /** What is taken: see `wordSample`. */
  sample: Taken;
  /** Most that is added of a reagent in excess, cm3, by its id. */
  excess: Readonly<Record<string, number>>;
  /** A solid is heated in the tube, so not even water may be in it. */
  dry: boolean;
  /** Anything is heated in it. */
  heated: boolean;
}

/** Of which samples a part takes. */
export interface Taken {
  /** "solution P", "each solution". */
  words: string;
  /** " (P and Q)" when there are several. */
  letters: string;
  several: boolean;
}

/** The bench as the steps of one part need it. */
export function benchOf(part: Part, samples: readonly GivenSample[], plan: BenchPlan): Bench {
  const marks = plan.tubes.filter((tube) => tube.part === part.label).flatMap((tube) => tube.marks);
  const excess: Record<string, number> = {};
  for (const { excess: one } of marks) if (one) excess[one.reagent] = Math.max(one.cm3, excess[one.reagent] ?? 0);
  const dry = part.tests.some((test) => test.steps.some((step) => step.do === "heat solid"));
  const heated =
    dry || part.tests.some((test) => test.steps.some(({ do: verb }) => verb === "warm" || verb === "boil"));
  return { reagents: plan.reagents, sample: wordSample(part, samples), excess, dry, heated };
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
  "acidified dichromate(VI) paper":
    "With tongs, hold a paper wetted with acidified potassium dichromate(VI) at the mouth of the tube.",
  "rod with hydrochloric acid":
    "Hold a glass rod wetted with concentrated hydrochloric acid near the mouth of the tube, with your teacher.",
  "rod with ammonia":
    "Hold a glass rod wetted with concentrated ammonia near the mouth of the tube, with your teacher.",
  "anhydrous copper(II) sulfate": "Put a little white anhydrous copper(II) sulfate on the drops on the cool wall.",
  "cobalt(II) chloride paper": "With tongs, touch the drops on the cool wall with dry, blue cobalt(II) chloride paper.",
};

/** Whoever heats fits the stopper first; either way the limewater must not find its way back. */
function wordLeadThrough({ inExcess, at }: Extract<Step, { do: "lead through" }>, { heated }: Bench): string[] {
  const strength = at ? ` (${figure(at.molPerDm3)} mol/dm3)` : "";
  const through = `the gas bubble through ${figure(BENCH_PRACTICE.limewaterLed.value)} cm3 of limewater${strength}`;
  const stopper = "the stopper of the delivery tube";
  return [
    `${heated ? `Fit ${stopper} before you heat, and` : `Close the tube at once with ${stopper} and`} let ${through}${inExcess ? " for as long as it comes" : " until you see a change"}.`,
    `Take the delivery tube out of the limewater while bubbles still come${heated ? ", and only then take the heat away" : ""}.`,
  ];
}

const wordIndicator = (indicator: Indicator): string =>
  `Touch ${INDICATORS[indicator].form} with a drop of the liquid on a clean glass rod, and compare the colour${indicator === "litmus" ? "" : " with the chart"}.`;

function reagent(step: Extract<Step, { do: "add" }>, { reagents }: Pick<Bench, "reagents">): string {
  const planned = reagents.find(({ id }) => id === step.reagent);
  const name = planned?.name ?? step.reagent;
  const strength = step.at ? `${figure(step.at.molPerDm3)} mol/dm3` : planned?.concentration;
  return strength && !name.includes("mol/dm") ? `${name} (${strength})` : name;
}

/** The steps of a test as whole sentences, in order. `gas`: one may come off. */
export function wordSteps(steps: readonly Step[], bench: Bench, gas: boolean): string[] {
  return steps.flatMap((step, index) => {
    const before = steps[index - 1];
    // "Add ..., shake" has said it already.
    if (step.do === "shake" && before?.do === "add" && !("pieces" in before.amount)) return [];
    return wordStep(step, bench, gas ? fizzing(steps[index + 1]) : "; shake");
  });
}

/** A tube from which a gas is awaited is not shaken: the gas would be gone before its test, and the froth out of the tube. */
const fizzing = (next: Step | undefined): string =>
  next?.do === "test gas" || next?.do === "lead through"
    ? ", a little at a time"
    : ", a little at a time; shake when the fizzing is over";

function wordTake(step: Extract<Step, { do: "take" }>, { sample, dry }: Bench): string {
  const amount = "volume" in step ? `${figure(step.volume.cm3)} cm3` : `${figure(step.mass.g)} g`;
  const tube = `clean, ${dry ? "dry, " : ""}labelled tube`;
  const into = sample.several ? `its own ${tube}` : `a ${tube}`;
  return `Put ${amount} of ${sample.words}${sample.letters} into ${into}.`;
}

function wordAdd(step: Extract<Step, { do: "add" }>, bench: Bench, then: string): string {
  const what = reagent(step, bench);
  const { amount } = step;
  if ("inExcess" in amount) {
    const most = bench.excess[step.reagent];
    const limit = most === undefined ? "" : `; ${figure(most)} cm3 at most`;
    return `Add ${what} drop by drop, shaking, until nothing more changes${limit}.`;
  }
  if ("pieces" in amount) return `Add ${amount.pieces} small ${amount.pieces === 1 ? "piece" : "pieces"} of ${what}.`;
  if ("drops" in amount) return `Add ${amount.drops} ${amount.drops === 1 ? "drop" : "drops"} of ${what}${then}.`;
  return `Add ${figure(amount.volume.cm3)} cm3 of ${what}${then}.`;
}

const wordFlame = ({ words, letters, several }: Taken): string[] => [
  "Dip the wire into dilute hydrochloric acid on a watch glass and hold it in the roaring flame; repeat until it gives no colour.",
  `Wet it with the acid once more and touch it to a little of ${words}${letters} on another watch glass.`,
  `Hold it at the edge of the roaring flame and look at once.${several ? " Clean the wire again before the next sample." : ""}`,
];

/** One step as a sentence, or as several; `then` ends what is said of an addition. */
function wordStep(step: Step, bench: Bench, then: string): string | string[] {
  switch (step.do) {
    case "take":
      return wordTake(step, bench);
    case "add":
      return wordAdd(step, bench, then);
    case "shake":
      return "Shake the tube gently.";
    case "warm":
      return "Warm the tube gently; keep it moving, its mouth away from everyone.";
    case "boil":
      return `Boil gently for ${time(step.time)}; keep the tube moving, its mouth away from everyone.`;
    case "cool":
      return "Let the tube cool to room temperature; when it is no longer too hot to touch, cold water on its outside helps.";
    case "stand":
      return `Let it stand for ${time(step.time)}.`;
    case "filter":
      return `Filter, and keep the ${step.keep}.`;
    case "wash":
      return "Wash the residue two or three times with a little deionised water; throw the washings away as waste.";
    case "heat solid":
      return `Heat the solid ${step.how}, the mouth of the tube a little lower than the bottom and away from everyone. Look at it hot, and again when cold.`;
    case "test gas":
      return GAS_TEST[step.with];
    case "lead through":
      return wordLeadThrough(step, bench);
    case "indicator":
      return wordIndicator(step.with);
    case "flame":
      return wordFlame(bench.sample);
  }
}

/** A test in a few words for a table or within a sentence: the paper's own without the stop at its end, or its reagents and actions. */
export function wordTest(test: Test, bench: Pick<Bench, "reagents">): string {
  if (test.says) return test.says.replace(/[.;]\s*$/, "");
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
      case "cool":
        return ["cooled"];
      case "stand":
        return ["left to stand"];
      case "filter":
        return [`filtered, the ${step.keep}`];
      case "wash":
        return ["washed with water"];
      case "heat solid":
        return [`the solid heated ${step.how}`];
      case "lead through":
        return [`its gas led through limewater${step.inExcess ? " in excess" : ""}`];
      case "indicator":
        return [`tried with ${step.with}`];
      case "flame":
        return ["flame test"];
      default:
        return [];
    }
  });
  return words.length > 0 ? words.join(", then ") : "look";
}

/** What a part takes of its samples. */
function wordSample(part: Part, samples: readonly GivenSample[]): Taken {
  const on = samples.filter(({ label }) => !part.samples || part.samples.includes(label));
  const form = part.from ?? (on.every(({ given }) => given === "solid") ? "solid" : "solution");
  const letters = list(on.map(({ label }) => label));
  if (on.length === 1) return { words: `${form} ${letters}`, letters: "", several: false };
  return { words: `each ${form}`, letters: ` (${letters})`, several: true };
}

/** The name of a gas given by its formula; a formula the engine has no row for passes as it is. */
export const gasName = (formula: string): string =>
  Object.hasOwn(GAS_SAFETY, formula) ? GAS_SAFETY[formula as GivenOff].name : formula;
