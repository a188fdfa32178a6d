import type { SubstanceRow } from "./row.ts";

/** Gases that salts give off. */
export const gases: readonly SubstanceRow[] = [
  { formula: "H2O", state: "g", dHf: -241.8, S: 188.8, source: "CRC" },
  { formula: "NH3", state: "g", dHf: -45.9, S: 192.8, source: "CRC" },
  { formula: "CO2", state: "g", dHf: -393.5, S: 213.8, source: "CRC" },
  { formula: "NO2", state: "g", dHf: 33.2, S: 240.1, source: "CRC", cold: "brown" },
  { formula: "NO", state: "g", dHf: 91.3, S: 210.8, source: "CRC" },
  { formula: "N2O", state: "g", dHf: 81.6, S: 220.0, source: "CRC" },
  { formula: "N2", state: "g", dHf: 0, S: 191.6, source: "CRC" },
  { formula: "SO2", state: "g", dHf: -296.8, S: 248.2, source: "CRC" },
  { formula: "SO3", state: "g", dHf: -395.7, S: 256.8, source: "CRC" },
  { formula: "HCl", state: "g", dHf: -92.3, S: 186.9, source: "CRC" },
  { formula: "HBr", state: "g", dHf: -36.3, S: 198.7, source: "CRC" },
  { formula: "HI", state: "g", dHf: 26.5, S: 206.6, source: "CRC" },
  { formula: "Cl2", state: "g", dHf: 0, S: 223.1, source: "CRC", cold: "yellow-green" },
  { formula: "Br2", state: "g", dHf: 30.9, S: 245.5, source: "CRC", cold: "red-brown" },
  { formula: "I2", state: "g", dHf: 62.4, S: 260.7, source: "CRC", cold: "violet" },
  { formula: "O2", state: "g", dHf: 0, S: 205.2, source: "CRC" },
  { formula: "S", state: "g", source: "colour only", cold: "yellow" },
];
