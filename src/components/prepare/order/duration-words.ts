/** What each planning figure is the time of: for the table under an order of work. */
import { DURATIONS as WORDS } from "#words/durations.ts";
import { DURATIONS } from "../../../engine/constants/durations.ts";
import { lasting, QUARTERS } from "../../../engine/planning/order-of-work/quarter-minutes.ts";
import { durationsIn } from "../../../engine/planning/order-of-work/tube-work.ts";
import type { Part } from "../../../engine/practical.ts";

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
