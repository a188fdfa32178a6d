/** A step of the procedure as an instruction: "Add sodium hydroxide (1 mol/dm3) drop by drop, shaking, until in excess." */
import { GAS_NAMES } from "#words/gas-names.ts";
import * as say from "#words/steps.ts";
import { BENCH_PRACTICE } from "../../engine/constants/bench-practice.ts";
import { INDICATORS } from "../../engine/constants/indicators.ts";
import type { BenchPlan, PlannedReagent } from "../../engine/planning/bench-plan.ts";
import type { Duration, GivenOff, GivenSample, Part, Step, Test } from "../../engine/practical.ts";

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

const strengthIn = (molPerDm3: number) => `${figure(molPerDm3)} mol/dm3`;

const wordLeadThrough = ({ inExcess, at }: Extract<Step, { do: "lead through" }>, { heated }: Bench): string[] =>
  say.leadThrough(figure(BENCH_PRACTICE.limewaterLed.value), at && strengthIn(at.molPerDm3), inExcess === true, heated);

function reagent(step: Extract<Step, { do: "add" }>, { reagents }: Pick<Bench, "reagents">): string {
  const planned = reagents.find(({ id }) => id === step.reagent);
  const name = planned?.name ?? step.reagent;
  const strength = step.at ? strengthIn(step.at.molPerDm3) : planned?.concentration;
  return strength && !name.includes("mol/dm") ? `${name} (${strength})` : name;
}

/** The steps of a test as whole sentences, in order. `gas`: one may come off. */
export function wordSteps(steps: readonly Step[], bench: Bench, gas: boolean): string[] {
  return steps.flatMap((step, index) => {
    const before = steps[index - 1];
    // "Add ..., shake" has said it already.
    if (step.do === "shake" && before?.do === "add" && !("pieces" in before.amount)) return [];
    return wordStep(step, bench, gas ? fizzing(steps[index + 1]) : say.THEN_SHAKE);
  });
}

/** A tube from which a gas is awaited is not shaken: the gas would be gone before its test, and the froth out of the tube. */
const fizzing = (next: Step | undefined): string =>
  next?.do === "test gas" || next?.do === "lead through" ? say.LITTLE_BY_LITTLE : say.AFTER_FIZZING;

function wordTake(step: Extract<Step, { do: "take" }>, { sample, dry }: Bench): string {
  const amount = "volume" in step ? `${figure(step.volume.cm3)} cm3` : `${figure(step.mass.g)} g`;
  return say.take(amount, sample.words + sample.letters, sample.several, dry);
}

function wordAdd(step: Extract<Step, { do: "add" }>, bench: Bench, then: string): string {
  const what = reagent(step, bench);
  const { amount } = step;
  if ("inExcess" in amount) {
    const most = bench.excess[step.reagent];
    return say.addInExcess(what, most === undefined ? undefined : figure(most));
  }
  if ("pieces" in amount) return say.addPieces(amount.pieces, what);
  if ("drops" in amount) return say.addDrops(amount.drops, what, then);
  return say.addVolume(figure(amount.volume.cm3), what, then);
}

/** One step as a sentence, or as several; `then` ends what is said of an addition. */
function wordStep(step: Step, bench: Bench, then: string): string | string[] {
  switch (step.do) {
    case "take":
      return wordTake(step, bench);
    case "add":
      return wordAdd(step, bench, then);
    case "shake":
      return say.SHAKE;
    case "warm":
      return say.WARM;
    case "boil":
      return say.boil(time(step.time));
    case "cool":
      return say.COOL;
    case "stand":
      return say.stand(time(step.time));
    case "filter":
      return say.filter(step.keep);
    case "wash":
      return say.WASH;
    case "heat solid":
      return say.heatSolid(step.how);
    case "test gas":
      return say.GAS_TEST[step.with];
    case "lead through":
      return wordLeadThrough(step, bench);
    case "indicator":
      return say.indicator(step.with, INDICATORS[step.with].form);
    case "flame":
      return say.flame(bench.sample.words + bench.sample.letters, bench.sample.several);
  }
}

/** A test in a few words for a table or within a sentence: the paper's own without the stop at its end, or its reagents and actions. */
export function wordTest(test: Test, bench: Pick<Bench, "reagents">): string {
  if (test.says) return test.says.replace(/[.;]\s*$/, "");
  const words = test.steps.flatMap((step): string[] => {
    switch (step.do) {
      case "add": {
        const name = bench.reagents.find(({ id }) => id === step.reagent)?.name ?? step.reagent;
        if ("inExcess" in step.amount) return [say.BRIEF.inExcess(name)];
        return ["drops" in step.amount ? say.BRIEF.drops(name, step.amount.drops) : name];
      }
      case "warm":
        return [say.BRIEF.warmed];
      case "boil":
        return [say.BRIEF.boiled];
      case "cool":
        return [say.BRIEF.cooled];
      case "stand":
        return [say.BRIEF.leftToStand];
      case "filter":
        return [say.BRIEF.filtered(step.keep)];
      case "wash":
        return [say.BRIEF.washed];
      case "heat solid":
        return [say.BRIEF.heated(step.how)];
      case "test gas":
        return [say.gasTest(step.with)];
      case "lead through":
        return [say.BRIEF.ledThrough(step.inExcess === true)];
      case "indicator":
        return [say.BRIEF.triedWith(step.with)];
      case "flame":
        return [say.BRIEF.flame];
      default:
        return [];
    }
  });
  return words.length > 0 ? words.join(say.BRIEF.followedBy) : say.BRIEF.look;
}

/** What a part takes of its samples. */
function wordSample(part: Part, samples: readonly GivenSample[]): Taken {
  const on = samples.filter(({ label }) => !part.samples || part.samples.includes(label));
  // What is weighed out is a solid, also where its solution stands beside it.
  const takes = part.tests.flatMap(({ steps }) => steps.filter((step) => step.do === "take"));
  const weighed = takes.length > 0 && takes.every((step) => "mass" in step);
  const form = part.from ?? (weighed || on.every(({ given }) => given === "solid") ? "solid" : "solution");
  const labels = on.map(({ label }) => label);
  if (on.length === 1) return { words: say.one(form, labels[0]), letters: "", several: false };
  return { words: say.each(form), letters: say.letters(labels), several: true };
}

/** The name of a gas given by its formula; a formula the engine has no row for passes as it is. */
export const gasName = (formula: string): string =>
  Object.hasOwn(GAS_NAMES, formula) ? GAS_NAMES[formula as GivenOff] : formula;
