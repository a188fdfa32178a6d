import type { BasisComponent } from "./basis.ts";

/** Components of the added ions and reagents; colours as in basis.ts, common knowledge of the trade without a source. */
// biome-ignore format: one component a line
export const moreBasis: readonly BasisComponent[] = [
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
