/** Every outside reference the engine is held against. */
import { compareDepths } from "./bench-figures.ts";
import type { Comparison } from "./comparison.ts";
import { compareDeduced, EXAMPLES } from "./deduced-rows.ts";
import { compareEquilibrium } from "./equilibrium.ts";
import { compareHeat } from "./heat.ts";
import { compareWordings } from "./published-wordings.ts";
import { compareSection } from "./qualitative.ts";
import { compareSolubility } from "./solubility.ts";
import { compareNotes } from "./table-notes.ts";
import { compareWorkedEquilibria } from "./worked/equilibria.ts";
import { compareWorkedPreparation } from "./worked/preparation.ts";
import { compareWorkedShipped } from "./worked/shipped.ts";

export const compareAll = (): Comparison[] => [
  compareEquilibrium(),
  ...["cation-alkali", "anion", "gas", "flame", "confirmatory", "appearance"].map((section) => compareSection(section)),
  compareNotes(),
  ...EXAMPLES.map(compareDeduced),
  compareHeat(),
  compareWordings(),
  compareDepths(),
  compareSolubility(),
  compareWorkedEquilibria(),
  compareWorkedShipped(),
  compareWorkedPreparation(),
];
