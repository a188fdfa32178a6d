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
];
