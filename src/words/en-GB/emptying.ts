/** Where tubes are emptied, and how. */
import type { Waste } from "../../engine/constants/reagents.ts";
import { AND, list } from "./language.ts";

export const SOLID_WASTE = "solid waste";
export const bottle = (of: Waste) => `${of} waste bottle`;
/** One beside the usual one, for these parts. */
export const bottleFor = (of: Waste, parts: readonly string[]) =>
  `${of} waste bottle for ${parts.length > 1 ? "parts" : "part"} ${list(parts)}`;
export const SULFATE_STANDS = "The sulfate that stands in it is for the barium.";
export const AMMONIA =
  "It holds ammonia, and silver goes into this bottle: pour it into the acid that stands there as soon as you have written down what you saw.";
export const SINK = "Acid and alkali neutralised, then down the sink with plenty of water, when your teacher says so.";
export const AT_ONCE = "Straight down the sink, one tube at a time, with much water, where your teacher allows it.";
export const WET_SOLID = "Wet, into the solid waste, not the sink.";
export const ownBottle = (what: string, reason: string) =>
  `A bottle of its own: the other would bring together ${what}, and ${reason}.`;
export const alsoHolds = (others: readonly Waste[]) =>
  `May also hold ${others.join(` ${AND} `)}: write it on the bottle.`;
export const notThere = (absent: readonly Waste[], present: readonly Waste[]) =>
  `In truth no ${list(absent)} gets there: the paper offers it, so the bottle stands there all the same.${present.length > 0 ? ` It does hold ${list(present)}.` : ""}`;

/** What stands in a bottle before the first tube, and why. */
export const putIn = (amounts: readonly string[]) => `Before the first tube, put in ${list(amounts)}.`;
export const FOR_AMMONIA = "ammonia, which must not stand with silver unless it is acid";
export const FOR_BARIUM = "barium, which comes down as its harmless sulfate";

/** What is emptied besides tubes of a sample. */
export const LIMEWATER_TUBES = "limewater tubes";
export const USED_PAPERS = "used papers";
export const USED_DICHROMATE = "used dichromate(VI) papers";
export const USED_COBALT = "used cobalt(II) chloride papers";
/** Why a bottle stands there. */
export const MAY_HOLD = "what the samples may hold";
