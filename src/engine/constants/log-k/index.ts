import { acidsAndBases } from "./acids-and-bases.ts";
import { aluminium } from "./aluminium.ts";
import { barium } from "./barium.ts";
import { type BasisComponent, basis as firstBasis } from "./basis.ts";
import { calcium } from "./calcium.ts";
import { chromium } from "./chromium.ts";
import { copper } from "./copper.ts";
import { gases } from "./gases.ts";
import { iodine } from "./iodine.ts";
import { iron } from "./iron.ts";
import { lead } from "./lead.ts";
import { magnesium } from "./magnesium.ts";
import { manganese } from "./manganese.ts";
import { moreBasis, moreReactions, moreSources } from "./more.ts";
import type { Reaction } from "./reaction.ts";
import { silver } from "./silver.ts";
import { sources as firstSources } from "./sources.ts";
import { zinc } from "./zinc.ts";

export type { BasisComponent } from "./basis.ts";
export type { Reaction } from "./reaction.ts";
export type { SourceKey } from "./sources.ts";

/** All components: those of the first tests, then those of further ions and of redox reagents. */
export const basis: readonly BasisComponent[] = [...firstBasis, ...moreBasis];

/** Citations by key. */
export const sources = { ...firstSources, ...moreSources } as const;

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
  ...moreReactions,
];
