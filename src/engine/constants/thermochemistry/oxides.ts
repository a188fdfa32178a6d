import type { SubstanceRow } from "./row.ts";

/** Oxides, and the elements that stay behind. */
export const oxides: readonly SubstanceRow[] = [
  { formula: "Li2O", state: "s", dHf: -597.9, S: 37.6, source: "CRC", cold: "white" },
  { formula: "Na2O", state: "s", dHf: -414.2, S: 75.1, source: "CRC", cold: "white" },
  { formula: "K2O", state: "s", dHf: -361.5, source: "CRC", cold: "pale yellow" },
  { formula: "MgO", state: "s", dHf: -601.6, S: 27.0, source: "CRC", cold: "white" },
  { formula: "CaO", state: "s", dHf: -634.9, S: 38.1, source: "CRC", cold: "white" },
  { formula: "SrO", state: "s", dHf: -592.0, S: 54.4, source: "CRC", cold: "white" },
  { formula: "BaO", state: "s", dHf: -548.0, S: 72.1, source: "CRC", cold: "white" },
  { formula: "Al2O3", state: "s", dHf: -1675.7, S: 50.9, source: "CRC", cold: "white" },
  { formula: "Cr2O3", state: "s", dHf: -1139.7, S: 81.2, source: "CRC", cold: "green", hot: "dark green" },
  { formula: "MnO", state: "s", dHf: -385.2, S: 59.7, source: "CRC", cold: "green" },
  { formula: "Mn3O4", state: "s", dHf: -1387.8, S: 155.6, source: "CRC", cold: "red-brown", hot: "black" },
  { formula: "Mn2O3", state: "s", dHf: -959.0, S: 110.5, source: "CRC", cold: "black" },
  { formula: "MnO2", state: "s", dHf: -520.0, S: 53.1, source: "CRC", cold: "black" },
  { formula: "FeO", state: "s", dHf: -272.0, S: 60.75, source: "JANAF", memory: true, cold: "black" },
  { formula: "Fe3O4", state: "s", dHf: -1118.4, S: 146.4, source: "CRC", cold: "black" },
  { formula: "Fe2O3", state: "s", dHf: -824.2, S: 87.4, source: "CRC", cold: "red-brown", hot: "black" },
  { formula: "CoO", state: "s", dHf: -237.9, S: 53.0, source: "CRC", cold: "black" },
  { formula: "NiO", state: "s", dHf: -239.7, S: 37.99, source: "NBS", memory: true, cold: "green" },
  { formula: "Cu2O", state: "s", dHf: -168.6, S: 93.1, source: "CRC", cold: "red-brown" },
  { formula: "CuO", state: "s", dHf: -157.3, S: 42.6, source: "CRC", cold: "black" },
  { formula: "ZnO", state: "s", dHf: -350.5, S: 43.7, source: "CRC", cold: "white", hot: "yellow" },
  { formula: "Ag2O", state: "s", dHf: -31.1, S: 121.3, source: "CRC", cold: "black" },
  { formula: "PbO", state: "s", dHf: -219.0, S: 66.5, source: "CRC", cold: "yellow", hot: "red-brown" },
  { formula: "Pb3O4", state: "s", dHf: -718.4, S: 211.3, source: "CRC", cold: "orange-red", hot: "dark brown" },
  { formula: "PbO2", state: "s", dHf: -277.4, S: 68.6, source: "CRC", cold: "dark brown" },

  { formula: "Ag", state: "s", dHf: 0, S: 42.6, source: "CRC", cold: "grey" },
  { formula: "I2", state: "s", dHf: 0, S: 116.1, source: "CRC", cold: "grey-black" },
  { formula: "S", state: "s", dHf: 0, S: 32.1, source: "CRC", cold: "yellow" },
];
