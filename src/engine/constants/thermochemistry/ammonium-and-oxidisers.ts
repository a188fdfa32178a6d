import type { SubstanceRow } from "./row.ts";

/** Ammonium salts; chromates and manganates. Ammonium sulfate's double salts and ammonium carbonate have no figures. */
export const ammoniumAndOxidisers: readonly SubstanceRow[] = [
  { formula: "NH4Cl", state: "s", dHf: -314.4, S: 94.6, source: "CRC", cold: "white" },
  { formula: "NH4Br", state: "s", dHf: -270.8, S: 113.0, source: "CRC", cold: "white" },
  { formula: "NH4I", state: "s", dHf: -201.4, S: 117.0, source: "CRC", cold: "white" },
  { formula: "NH4NO3", state: "s", dHf: -365.6, S: 151.1, source: "CRC", cold: "white" },
  { formula: "NH4NO2", state: "s", dHf: -256.5, source: "CRC", cold: "white" },
  { formula: "(NH4)2SO4", state: "s", dHf: -1180.9, S: 220.1, source: "CRC", cold: "white" },
  { formula: "NH4HSO4", state: "s", dHf: -1027.0, source: "CRC", cold: "white" },
  { formula: "(NH4)2CO3", state: "s", source: "colour only", cold: "white" },
  { formula: "(NH4)2Cr2O7", state: "s", dHf: -1806.7, source: "NBS", memory: true, cold: "orange" },
  { formula: "K2CrO4", state: "s", dHf: -1403.7, S: 200.1, source: "NBS", memory: true, cold: "yellow", hot: "red" },
  { formula: "KMnO4", state: "s", dHf: -837.2, S: 171.7, source: "CRC", cold: "purple" },
  { formula: "K2MnO4", state: "s", dHf: -1184.0, source: "NBS", memory: true, cold: "dark green" },
];
