/** What each planning figure is the time of: for the table under an order of work. */
import { DURATIONS } from "../../../engine/constants/durations.ts";
import { lasting, QUARTERS } from "../../../engine/planning/order-of-work/quarter-minutes.ts";
import { durationsIn } from "../../../engine/planning/order-of-work/tube-work.ts";
import type { Part } from "../../../engine/practical.ts";

const WORDS: Readonly<Record<keyof typeof DURATIONS, string>> = {
  plan: "read it all, plan, label and mark the tubes",
  clearUp: "clear up",
  takeSolution: "take some of a solution",
  takeSolid: "take some of a solid",
  addDrops: "add drops",
  addVolume: "add a measured volume",
  addInExcess: "add to excess, shaking",
  addPieces: "add a piece of a solid",
  shake: "shake",
  warm: "warm",
  bringToBoil: "bring to the boil, before the minutes the paper asks for",
  heatGently: "heat a solid gently",
  heatStrongly: "heat a solid strongly",
  cool: "let it cool until it can be held",
  gasAtMouth: "test a gas at the mouth of the tube",
  gasByDropper: "draw a gas up and bubble it through limewater",
  leadThrough: "lead a gas through limewater",
  indicator: "try a drop on indicator paper",
  cleanWire: "clean the flame-test wire",
  flame: "look at a flame",
  pourOnFilter: "fold and wet a filter paper, pour on",
  runThrough: "wait while it runs through the filter",
  wash: "wash a residue",
  writeDown: "write down one line of the record",
  rinse: "empty and rinse a used tube",
};

export interface DurationLine {
  what: string;
  /** As the order of work counts it. */
  minutes: number;
  source: string;
}

/** The figures that decide this paper's order of work, with what each rests on. */
export const durationLines = (parts: readonly Part[]): DurationLine[] =>
  durationsIn(parts).map((key) => ({
    what: WORDS[key],
    minutes: lasting(key) / QUARTERS,
    source: DURATIONS[key].source,
  }));
