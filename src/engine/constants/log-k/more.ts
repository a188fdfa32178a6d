import { chromate } from "./chromate.ts";
import { cobalt } from "./cobalt.ts";
import { cyanoferrates } from "./cyanoferrates.ts";
import { halogens } from "./halogens.ts";
import { lithium } from "./lithium.ts";
import { nickel } from "./nickel.ts";
import { nitrite } from "./nitrite.ts";
import { peroxide } from "./peroxide.ts";
import { potassium } from "./potassium.ts";
import type { Reaction } from "./reaction.ts";
import { strontium } from "./strontium.ts";
import { thiocyanate } from "./thiocyanate.ts";
import { thiosulfate } from "./thiosulfate.ts";

export { moreBasis } from "./more-basis.ts";
export { type MoreSourceKey, moreSources } from "./more-sources.ts";

/** Rows of the ions and reagents beyond the first tests: lithium, strontium, cobalt, nickel, and the reagents of redox tests. */
export const moreReactions: readonly Reaction[] = [
  ...lithium,
  ...strontium,
  ...cobalt,
  ...nickel,
  ...nitrite,
  ...thiosulfate,
  ...thiocyanate,
  ...cyanoferrates,
  ...chromate,
  ...halogens,
  ...peroxide,
  ...potassium,
];
