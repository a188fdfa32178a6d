import { acidsAndBases } from "./acids-and-bases.ts";
import { aluminium } from "./aluminium.ts";
import { barium } from "./barium.ts";
import { calcium } from "./calcium.ts";
import { chromate } from "./chromate.ts";
import { chromium } from "./chromium.ts";
import { cobalt } from "./cobalt.ts";
import { copper } from "./copper.ts";
import { cyanoferrates } from "./cyanoferrates.ts";
import { gases } from "./gases.ts";
import { halogens } from "./halogens.ts";
import { iodine } from "./iodine.ts";
import { iron } from "./iron.ts";
import { lead } from "./lead.ts";
import { lithium } from "./lithium.ts";
import { magnesium } from "./magnesium.ts";
import { manganese } from "./manganese.ts";
import { nickel } from "./nickel.ts";
import { nitrite } from "./nitrite.ts";
import { peroxide } from "./peroxide.ts";
import { potassium } from "./potassium.ts";
import type { Reaction } from "./reaction.ts";
import { silver } from "./silver.ts";
import { strontium } from "./strontium.ts";
import { thiocyanate } from "./thiocyanate.ts";
import { thiosulfate } from "./thiosulfate.ts";
import { zinc } from "./zinc.ts";

export { type BasisComponent, basis } from "./basis.ts";
export type { Reaction } from "./reaction.ts";
export { type SourceKey, sources } from "./sources.ts";

/** Every reaction, also those that do not happen within minutes (`formsInMinutes: false`). */
export const reactions: readonly Reaction[] = [
  ...acidsAndBases,
  ...silver,
  ...aluminium,
  ...barium,
  ...calcium,
  ...chromium,
  ...copper,
  ...iodine,
  ...iron,
  ...magnesium,
  ...manganese,
  ...lead,
  ...zinc,
  ...gases,
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
