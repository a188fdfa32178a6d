/**
 * Enthalpies of formation and entropies of the solids of a school store, of what heat makes of them, and of the gases that leave.
 * Remembered figures are marked. No figure was changed after the first comparison with a published table; the colours are textbook
 * knowledge, written down by someone who had read that table.
 */
import { ammoniumAndOxidisers } from "./ammonium-and-oxidisers.ts";
import { carbonatesAndHydroxides } from "./carbonates-and-hydroxides.ts";
import { gases } from "./gases.ts";
import { halides } from "./halides.ts";
import { hydrates } from "./hydrates.ts";
import { nitrates } from "./nitrates.ts";
import { oxides } from "./oxides.ts";
import type { SubstanceRow } from "./row.ts";
import { sulfurSalts } from "./sulfur-salts.ts";

export type { SubstanceRow, ThermochemistrySource } from "./row.ts";

export const SUBSTANCES: readonly SubstanceRow[] = [
  ...gases,
  ...oxides,
  ...carbonatesAndHydroxides,
  ...nitrates,
  ...sulfurSalts,
  ...halides,
  ...ammoniumAndOxidisers,
  ...hydrates,
];

/**
 * Differences from one water of crystallisation to the next, where a hydrate has no figures of its own: the difference rule of
 * Glasser and Jenkins (Inorg. Chem. 41, 4378, 2002), from memory. Against the rows here with two waters and more it is good to 7 kJ/mol
 * and 12 J/(mol K) for each water; the chlorides of magnesium and aluminium (11 to 33 kJ/mol) and a single last water (10 to 27 kJ/mol)
 * are held faster than it says.
 */
export const WATER_OF_CRYSTALLISATION = {
  dHf: { value: -298.6, unit: "kJ/mol" },
  S: { value: 40.9, unit: "J/(mol K)" },
  source: "Glasser and Jenkins, difference rules for hydrates, from memory",
} as const;
