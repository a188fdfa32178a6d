/** The steps a form offers: how each is called, what it starts as, and what an unfinished one must be asked. */
import type { WrittenStep } from "../../engine/constants/standard-tests.ts";

/** Bottles by id, with their names. */
export type Bottles = readonly (readonly [id: string, name: string])[];

export interface StepKind {
  verb: string;
  name: string;
  /** A fresh step of the kind; empty texts are chosen or typed by the reader. */
  fresh: WrittenStep;
}

export const STEP_KINDS: readonly StepKind[] = [
  { verb: "take", name: "Take some of the sample", fresh: { take: "1 cm3" } },
  { verb: "add", name: "Add a reagent", fresh: { add: "", volume: "1 cm3" } },
  { verb: "warm", name: "Warm gently", fresh: { warm: true } },
  { verb: "boil", name: "Boil", fresh: { boil: "1 min" } },
  { verb: "testGas", name: "Test the gas", fresh: { testGas: "" } },
  { verb: "leadThrough", name: "Lead the gas through limewater", fresh: { leadThrough: "limewater" } },
  { verb: "heat", name: "Heat the dry solid", fresh: { heat: "gently" } },
  { verb: "flame", name: "Flame test", fresh: { flame: true } },
  { verb: "indicator", name: "Try with an indicator", fresh: { indicator: "litmus" } },
  { verb: "filter", name: "Filter", fresh: { filter: "filtrate" } },
  { verb: "wash", name: "Wash the residue", fresh: { wash: true } },
  { verb: "cool", name: "Let it cool", fresh: { cool: true } },
  { verb: "stand", name: "Let it stand", fresh: { stand: "5 min" } },
  { verb: "shake", name: "Shake", fresh: { shake: true } },
];

export const kindOf = (step: WrittenStep): StepKind | undefined => STEP_KINDS.find(({ verb }) => verb in step);

/** How an amount of a reagent is said. */
export const AMOUNTS = [
  ["drops", "drops"],
  ["volume", "a volume"],
  ["until", "in excess"],
  ["pieces", "pieces"],
] as const;
export type AmountKey = (typeof AMOUNTS)[number][0];

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
  if (step.add === "") return "Which reagent? Choose it from the list.";
  if ("add" in step && amountKey(step) === "") {
    const name = bottles.find(([id]) => id === step.add)?.[1] ?? step.add;
    return `How much ${name}? Choose drops, a volume, or in excess.`;
  }
  if (step.testGas === "") return "With what is the gas tested?";
  if (step.filter === "") return "Which is kept: the filtrate or the residue?";
  if (step.stand === "") return 'How long does it stand? Write a time such as "5 min".';
  if (step.boil === "") return 'How long is it boiled? Write a time such as "1 min".';
  if (step.take === "") return 'How much is taken? Write an amount such as "1 cm3" or "0.2 g".';
  return undefined;
}

/** A step in a few words: "add 5 drops of aqueous ammonia". */
export function wordsOf(step: WrittenStep, bottles: Bottles): string {
  const kind = kindOf(step);
  if (!kind) return "an unknown step";
  switch (kind.verb) {
    case "take":
      return `take ${step.take || "…"}`;
    case "add": {
      const name = bottles.find(([id]) => id === step.add)?.[1] ?? (step.add || "…");
      const strength = step.at ? ` (${step.at})` : "";
      if ("until" in step) return `add ${name}${strength} in excess`;
      if ("drops" in step) return `add ${step.drops} ${step.drops === 1 ? "drop" : "drops"} of ${name}${strength}`;
      if ("pieces" in step) return `add ${step.pieces} ${step.pieces === 1 ? "piece" : "pieces"} of ${name}`;
      return `add ${step.volume ?? "…"} of ${name}${strength}`;
    }
    case "boil":
      return `boil for ${step.boil || "…"}`;
    case "stand":
      return `let it stand for ${step.stand || "…"}`;
    case "filter":
      return `filter, keep the ${step.filter || "…"}`;
    case "heat":
      return `heat the dry solid ${step.heat}`;
    case "testGas":
      return `test the gas: ${step.testGas || "…"}`;
    case "leadThrough":
      return `lead the gas through limewater${"until" in step ? ", in excess" : ""}`;
    case "indicator":
      return `try it with ${step.indicator}`;
    default:
      return kind.name.charAt(0).toLowerCase() + kind.name.slice(1);
  }
}
