/** A written step in a few words: "add 5 drops of aqueous ammonia". */
import { indicator, STEPS } from "#words/paper-form.ts";
import { STEP as say } from "#words/paper-parts.ts";
import { gasTest } from "#words/steps.ts";
import type { Indicator } from "../../engine/constants/indicators.ts";
import type { WrittenStep } from "../../engine/constants/standard-tests.ts";
import type { GasTest } from "../../engine/practical.ts";
import { type Bottles, kindOf } from "./step-kinds.ts";

/** Stands for what is missing. */
const OPEN = "…";

export function inFewWords(step: WrittenStep, bottles: Bottles): string {
  const verb = kindOf(step)?.verb;
  const entry = (key: string) => String(step[key] || OPEN);
  switch (verb) {
    case undefined:
      return say.unknown;
    case "add":
      return added(step, bottles.find(([id]) => id === step.add)?.[1] ?? entry("add"));
    case "take":
    case "boil":
    case "stand":
    case "filter":
    case "heat":
      return say[verb](entry(verb));
    case "testGas":
      return say.testGas(gasTest(entry("testGas") as GasTest));
    case "leadThrough":
      return say.leadThrough("until" in step);
    case "indicator":
      return say.indicator(indicator(entry("indicator") as Indicator));
    default:
      return say.other(STEPS[verb]);
  }
}

function added({ drops, pieces, volume = OPEN, at, ...step }: WrittenStep, name: string): string {
  const what = at ? `${name} (${at})` : name;
  if ("until" in step) return say.inExcess(what);
  if (drops !== undefined) return say.drops(String(drops), what);
  return pieces === undefined ? say.volume(String(volume), what) : say.pieces(String(pieces), name);
}
