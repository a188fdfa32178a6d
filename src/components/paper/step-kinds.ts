/** The steps a form offers: what it starts as, and what an unfinished one must be asked. */
import * as say from "#words/paper-form.ts";
import type { WrittenStep } from "../../engine/constants/standard-tests.ts";

/** Bottles by id, with their names. */
export type Bottles = readonly (readonly [id: string, name: string])[];

export interface StepKind {
  /** The entry it is written as; `STEPS` of the words names it. */
  verb: keyof typeof say.STEPS;
  /** A fresh step of the kind; empty texts are chosen or typed by the reader. */
  fresh: WrittenStep;
}

export const STEP_KINDS: readonly StepKind[] = [
  { verb: "take", fresh: { take: "1 cm3" } },
  { verb: "add", fresh: { add: "", volume: "1 cm3" } },
  { verb: "warm", fresh: { warm: true } },
  { verb: "boil", fresh: { boil: "1 min" } },
  { verb: "testGas", fresh: { testGas: "" } },
  { verb: "leadThrough", fresh: { leadThrough: "limewater" } },
  { verb: "heat", fresh: { heat: "gently" } },
  { verb: "flame", fresh: { flame: true } },
  { verb: "indicator", fresh: { indicator: "litmus" } },
  { verb: "filter", fresh: { filter: "filtrate" } },
  { verb: "wash", fresh: { wash: true } },
  { verb: "cool", fresh: { cool: true } },
  { verb: "stand", fresh: { stand: "5 min" } },
  { verb: "shake", fresh: { shake: true } },
];

export const kindOf = (step: WrittenStep): StepKind | undefined => STEP_KINDS.find(({ verb }) => verb in step);

/** How an amount of a reagent is said. */
export type AmountKey = keyof typeof say.AMOUNTS;
export const AMOUNTS = Object.entries(say.AMOUNTS) as [AmountKey, string][];

export const amountKey = (step: WrittenStep): AmountKey | "" => AMOUNTS.find(([key]) => key in step)?.[0] ?? "";

/** The step with its amount said in another way. */
export function withAmount(step: WrittenStep, key: AmountKey | ""): WrittenStep {
  const { drops: _, volume: _v, until: _u, pieces: _p, ...rest } = step;
  const fresh = { drops: 5, volume: "1 cm3", until: "in excess", pieces: 1 };
  return key === "" ? rest : { ...rest, [key]: fresh[key] };
}

/** The step with an entry as typed: a number where one is meant and stands there. An empty one that may be left out is left out. */
export function withEntry(step: WrittenStep, key: string, typed: string): WrittenStep {
  const counted = key === "drops" || key === "pieces";
  if (key === "at" && typed === "") {
    const { at: _, ...rest } = step;
    return rest;
  }
  return { ...step, [key]: counted && /^\d{1,3}$/.test(typed.trim()) ? Number(typed) : typed };
}

/** What an unfinished step must be asked; undefined when nothing is missing. */
export function askOf(step: WrittenStep, bottles: Bottles): string | undefined {
  if (step.add === "") return say.WHICH_REAGENT;
  if ("add" in step && amountKey(step) === "") {
    return say.howMuchOf(bottles.find(([id]) => id === step.add)?.[1] ?? String(step.add));
  }
  if (step.testGas === "") return say.WITH_WHAT;
  if (step.filter === "") return say.WHICH_KEPT;
  if (step.stand === "") return say.HOW_LONG_STANDS;
  if (step.boil === "") return say.HOW_LONG_BOILS;
  if (step.take === "") return say.HOW_MUCH_TAKEN;
  return undefined;
}
