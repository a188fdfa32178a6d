/** Times of the order of work are whole numbers of quarter minutes, so that sums are exact. */
import { DURATIONS } from "../../constants/durations.ts";

/** In a minute. */
export const QUARTERS = 4;

/** A time in minutes as quarters; odd seconds count as the next quarter. */
export const quarters = (minutes: number): number => Math.ceil(minutes * QUARTERS - 1e-9);

/** A duration of the trade, in quarters. */
export const lasting = (what: keyof typeof DURATIONS): number => quarters(DURATIONS[what].minutes);
