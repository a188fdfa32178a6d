/** The order of work in words and figures. */
import * as say from "#words/order.ts";
import type { Turn } from "../../../engine/planning/order-of-work/bench-work.ts";
import type { OrderOfWork } from "../../../engine/planning/order-of-work/order-of-work.ts";
import type { Step } from "../../../engine/practical.ts";
import { figures } from "../../figures.ts";
import type { Block } from "./blocks.ts";

const FRACTIONS = ["", "¼", "½", "¾"];

/** Minutes as a clock on the wall shows them: "12½". Times of the plan are whole quarters. */
export function minutes(time: number): string {
  const whole = Math.floor(time + 1e-9);
  const quarter = FRACTIONS[Math.round((time - whole) * 4)];
  return whole === 0 && quarter ? quarter : `${whole}${quarter}`;
}

/** "1 minute", "12½ minutes". */
export const inMinutes = (time: number): string => say.inMinutes(minutes(time), time === 1);

/** Names of reagents by id, as a bench plan has them. */
interface Named {
  reagents: readonly { id: string; name: string }[];
}

/** A stretch of work on a tube in a few words, the writing down left out: "take 1 cm3, add 5 drops of aqueous ammonia". */
export function wordTurn({ steps }: Pick<Turn, "steps">, { reagents }: Named): string {
  const nameOf = (id: string) => reagents.find((one) => one.id === id)?.name ?? id;
  const words = steps.flatMap((step) => (step.do === "shake" ? [] : [wordStep(step, nameOf)]));
  return words.length > 0 ? words.join(", ") : say.STEPS.lookAgain;
}

function wordStep(step: Exclude<Step, { do: "shake" }>, nameOf: (id: string) => string): string {
  switch (step.do) {
    case "take":
      return say.STEPS.take("volume" in step ? `${figures(step.volume.cm3)} cm3` : `${figures(step.mass.g)} g`);
    case "add": {
      const { amount } = step;
      const name = nameOf(step.reagent);
      if ("inExcess" in amount) return say.STEPS.inExcess(name);
      if ("drops" in amount) return say.STEPS.drops(amount.drops, name);
      if ("pieces" in amount) return say.STEPS.pieces(amount.pieces, name);
      return say.STEPS.volume(figures(amount.volume.cm3), name);
    }
    case "boil":
      return say.STEPS.boil(inMinutes(step.time.min));
    case "filter":
      return say.STEPS.filter(step.keep);
    case "wash":
      return say.STEPS.wash;
    case "heat solid":
      return say.STEPS.heat(step.how);
    case "test gas":
      return say.STEPS.testGas(step.with);
    case "lead through":
      return say.STEPS.leadThrough(step.inExcess);
    case "indicator":
      return say.STEPS.indicator(step.with);
    case "flame":
      return say.STEPS.flame;
    default:
      return say.STEPS[step.do];
  }
}

/** "a(ii) for R, S and T". */
export const wordTubes = ({ cells, samples }: Block): string => say.testsFor(cells, samples);

/** "Then each stands for 5 minutes." */
export const wordWait = ({ wait, samples }: Block): string | undefined =>
  wait && say.wait(wait.to, samples.length > 1, inMinutes(wait.minutes));

/** How long it all takes, held against what the paper allows, and what is known of anything shorter. */
export function wordWhole({ bench, whole, least }: OrderOfWork, allowed: number): string {
  const over = whole - allowed;
  const fits = over <= 0 ? say.fits(allowed) : say.over(inMinutes(over), allowed);
  const proof =
    least === bench ? say.shortest(minutes(least)) : say.nearShortest(inMinutes(least), inMinutes(bench - least));
  return say.whole(inMinutes(bench), minutes(whole), fits, proof);
}
