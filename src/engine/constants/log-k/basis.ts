/** A component: every other species is written as a sum of these. */
export type BasisComponent = {
  readonly id: string;
  readonly charge: number;
  readonly colour: string;
  readonly colourNote?: string;
};

/**
 * The basis on which all reactions of this folder are written; water itself is the solvent. Colours are those of dilute
 * solutions, common knowledge of the trade without a source.
 */
// biome-ignore format: one component a line
export const basis: readonly BasisComponent[] = [
  { id: "H+", charge: 1, colour: "colourless" },
  { id: "Na+", charge: 1, colour: "colourless" },
  { id: "K+", charge: 1, colour: "colourless" },
  { id: "NH3", charge: 0, colour: "colourless" },
  { id: "NO3-", charge: -1, colour: "colourless" },
  { id: "Cl-", charge: -1, colour: "colourless" },
  { id: "Br-", charge: -1, colour: "colourless" },
  { id: "I-", charge: -1, colour: "colourless" },
  { id: "SO4^2-", charge: -2, colour: "colourless" },
  { id: "SO3^2-", charge: -2, colour: "colourless" },
  { id: "CO3^2-", charge: -2, colour: "colourless" },
  { id: "Ag+", charge: 1, colour: "colourless" },
  { id: "Al^3+", charge: 3, colour: "colourless" },
  { id: "Ba^2+", charge: 2, colour: "colourless" },
  { id: "Ca^2+", charge: 2, colour: "colourless" },
  { id: "Cr^3+", charge: 3, colour: "green", colourNote: "green with chloride or sulfate bound, violet as the plain hydrated ion" },
  { id: "Cu^2+", charge: 2, colour: "pale blue" },
  { id: "Cu+", charge: 1, colour: "colourless" },
  { id: "Fe^2+", charge: 2, colour: "very pale green" },
  { id: "Fe^3+", charge: 3, colour: "pale violet", colourNote: "the plain hydrated ion, seen only in strong acid; hydrolysed it is yellow-brown" },
  { id: "Mg^2+", charge: 2, colour: "colourless" },
  { id: "Mn^2+", charge: 2, colour: "very pale pink", colourNote: "almost colourless" },
  { id: "Pb^2+", charge: 2, colour: "colourless" },
  { id: "Zn^2+", charge: 2, colour: "colourless" },
  { id: "I2", charge: 0, colour: "brown" },
  { id: "H2O", charge: 0, colour: "colourless" },
  { id: "Li+", charge: 1, colour: "colourless" },
  { id: "Sr^2+", charge: 2, colour: "colourless" },
  { id: "Co^2+", charge: 2, colour: "pink" },
  { id: "Ni^2+", charge: 2, colour: "green" },
  { id: "NO2-", charge: -1, colour: "colourless" },
  { id: "S2O3^2-", charge: -2, colour: "colourless" },
  { id: "S4O6^2-", charge: -2, colour: "colourless" },
  { id: "HS-", charge: -1, colour: "colourless" },
  { id: "CrO4^2-", charge: -2, colour: "yellow" },
  { id: "MnO4-", charge: -1, colour: "purple" },
  { id: "SCN-", charge: -1, colour: "colourless" },
  { id: "[Fe(CN)6]^4-", charge: -4, colour: "pale yellow" },
  { id: "[Fe(CN)6]^3-", charge: -3, colour: "yellow" },
  { id: "Cl2", charge: 0, colour: "yellow-green", colourNote: "pale" },
  { id: "Br2", charge: 0, colour: "orange" },
  { id: "H2O2", charge: 0, colour: "colourless" },
  { id: "O2", charge: 0, colour: "colourless" },
  { id: "H2", charge: 0, colour: "colourless" },
  { id: "NO", charge: 0, colour: "colourless" },
  { id: "S", charge: 0, colour: "colourless", colourNote: "only ever a trace; the solid is pale yellow" },
  { id: "MnO2", charge: 0, colour: "colourless", colourNote: "only ever a trace; the solid is dark brown" },
  { id: "Ag", charge: 0, colour: "colourless", colourNote: "only ever a trace; the solid is grey" },
];
