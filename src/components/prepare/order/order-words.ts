/** The order of work in words and figures. */
import type { Turn } from "../../../engine/planning/order-of-work/bench-work.ts";
import type { OrderOfWork } from "../../../engine/planning/order-of-work/order-of-work.ts";
import type { Step } from "../../../engine/practical.ts";
import { list } from "../../sentence.ts";
import type { Block } from "./blocks.ts";

const FRACTIONS = ["", "¼", "½", "¾"];

/** Minutes as a clock on the wall shows them: "12½". Times of the plan are whole quarters. */
export function minutes(time: number): string {
  const whole = Math.floor(time + 1e-9);
  const quarter = FRACTIONS[Math.round((time - whole) * 4)];
  return whole === 0 && quarter ? quarter : `${whole}${quarter}`;
}

/** "1 minute", "12½ minutes". */
export const inMinutes = (time: number): string => `${minutes(time)} ${time === 1 ? "minute" : "minutes"}`;

/** Names of reagents by id, as a bench plan has them. */
interface Named {
  reagents: readonly { id: string; name: string }[];
}

/** A stretch of work on a tube in a few words, the writing down left out: "take 1 cm3, add 5 drops of aqueous ammonia". */
export function wordTurn({ steps }: Pick<Turn, "steps">, { reagents }: Named): string {
  const nameOf = (id: string) => reagents.find((one) => one.id === id)?.name ?? id;
  const words = steps.flatMap((step) => (step.do === "shake" ? [] : [wordStep(step, nameOf)]));
  return words.length > 0 ? words.join(", ") : "look again";
}

function wordStep(step: Step, nameOf: (id: string) => string): string {
  switch (step.do) {
    case "take":
      return "volume" in step ? `take ${step.volume.cm3} cm3` : `take ${step.mass.g} g`;
    case "add": {
      const { amount } = step;
      const name = nameOf(step.reagent);
      if ("inExcess" in amount) return `add ${name} to excess`;
      if ("drops" in amount) return `add ${amount.drops} ${amount.drops === 1 ? "drop" : "drops"} of ${name}`;
      if ("pieces" in amount) return `add ${amount.pieces} ${amount.pieces === 1 ? "piece" : "pieces"} of ${name}`;
      return `add ${amount.volume.cm3} cm3 of ${name}`;
    }
    case "boil":
      return `boil for ${inMinutes(step.time.min)}`;
    case "filter":
      return `filter, keep the ${step.keep}`;
    case "wash":
      return "wash the residue";
    case "heat solid":
      return `heat the solid ${step.how}`;
    case "test gas":
      return `test the gas: ${step.with}`;
    case "lead through":
      return `lead the gas through limewater${step.inExcess ? " for as long as it comes" : ""}`;
    case "indicator":
      return `try it with ${step.with}`;
    case "flame":
      return "clean the wire, test in the flame";
    default:
      return step.do;
  }
}

/** "a(ii) for R, S and T". */
export const wordTubes = ({ cells, samples }: Block): string => `${cells.join(", ")} for ${list(samples)}`;

const ALONE: Record<NonNullable<Block["wait"]>["to"], string> = {
  stand: "stands",
  cool: "cools",
  "drip through the filter": "drips through the filter",
};

/** "Then each stands for 5 minutes." */
export function wordWait({ wait, samples }: Block): string | undefined {
  if (!wait) return undefined;
  return `Then ${samples.length === 1 ? "it" : "each"} ${ALONE[wait.to]} for ${inMinutes(wait.minutes)}.`;
}

/** How long it all takes, held against what the paper allows, and what is known of anything shorter. */
export function wordWhole({ bench, whole, least }: OrderOfWork, allowed: number): string {
  const over = whole - allowed;
  const fits =
    over <= 0 ? `it fits into the ${allowed} minutes allowed` : `${inMinutes(over)} more than the ${allowed} allowed`;
  const proof =
    least === bench
      ? `No order takes less than ${minutes(least)} at the bench, so none is shorter: that is proved.`
      : `No order takes less than ${inMinutes(least)} at the bench, so this one is at most ${inMinutes(bench - least)} from the shortest.`;
  return `${inMinutes(bench)} at the bench and ${minutes(whole)} with planning and clearing up: ${fits}. ${proof}`;
}
