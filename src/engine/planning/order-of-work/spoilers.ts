/**
 * What in the handling of a procedure could spoil an observation or break a tube, whatever the samples hold: common practice, no source.
 * What spoils one because of what a sample holds is found by the bench (bench/interference.ts).
 */
import { plannedFor } from "#words/bench.ts";
import { said } from "#words/constants.ts";
import { DURATIONS } from "../../constants/durations.ts";
import type { Part, Practical } from "../../practical.ts";
import { heatsLiquid, heatsSolid, stepsOf } from "../tube-choice.ts";

export interface Spoiler {
  /** Letters of the parts. */
  parts: string[];
  says: string;
}

/** What is to be minded, most harmful first. */
export function spoilers({ parts }: Pick<Practical, "parts">): Spoiler[] {
  return SPOILERS.flatMap(({ when, says, planned }) => {
    const mine = parts.filter(when).map(({ label }) => label);
    const time = planned === undefined ? "" : ` ${plannedFor(planned)}`;
    return mine.length > 0 ? [{ parts: mine, says: said(says) + time }] : [];
  });
}

const adds = (part: Part) => stepsOf(part).filter((step) => step.do === "add");

/** `planned`: minutes the order of work counts for it. */
export const SPOILERS: readonly { when: (part: Part) => boolean; says: string; planned?: number }[] = [
  {
    when: (part) => {
      const steps = stepsOf(part);
      return (
        steps.some(({ do: verb }) => verb === "lead through") && steps.some((s) => heatsLiquid(s) || heatsSolid(s))
      );
    },
    says:
      "Lift the delivery tube out of the limewater before the flame is taken away. A cooling tube sucks the limewater back, and cold " +
      "liquid cracks hot glass.",
  },
  {
    when: (part) => {
      const steps = stepsOf(part);
      const heated = steps.findIndex(heatsSolid);
      const wet = steps.findIndex((step, at) => at > heated && step.do === "add");
      return (
        heated >= 0 &&
        wet > heated &&
        !steps.slice(heated, wet).some(({ do: verb }) => verb === "cool" || verb === "stand")
      );
    },
    says: "Liquid is added to a tube that was heated: let it cool first, or the glass cracks.",
    planned: DURATIONS.cool.minutes,
  },
  {
    when: (part) => {
      const steps = stepsOf(part);
      const hot = steps.findIndex(heatsLiquid);
      return hot >= 0 && steps.some((step, at) => at > hot && step.do === "add" && "drops" in step.amount);
    },
    says: "Drops are counted into a tube that was heated: take it from the flame first, so that nothing spits at the dropper.",
  },
  {
    when: (part) => new Set(adds(part).map((step) => step.reagent)).size > 1,
    says: "Several bottles are used on one tube: each keeps its own dropper, which never touches the tube or another bottle.",
  },
];
