import type { SubstanceRow } from "./row.ts";

/** Without figures, so left out: the entropies of the nitrites of calcium, strontium and barium, the anhydrous nitrates of aluminium and iron(III), iron(II) nitrate. */
export const nitrates: readonly SubstanceRow[] = [
  { formula: "LiNO3", state: "s", dHf: -483.1, S: 90.0, source: "CRC", cold: "white" },
  { formula: "NaNO3", state: "s", dHf: -467.9, S: 116.5, source: "CRC", cold: "white" },
  { formula: "KNO3", state: "s", dHf: -494.6, S: 133.1, source: "CRC", cold: "white" },
  { formula: "Mg(NO3)2", state: "s", dHf: -790.7, S: 164.0, source: "CRC", cold: "white" },
  { formula: "Ca(NO3)2", state: "s", dHf: -938.2, S: 193.2, source: "CRC", cold: "white" },
  { formula: "Sr(NO3)2", state: "s", dHf: -978.2, S: 194.6, source: "CRC", cold: "white" },
  { formula: "Ba(NO3)2", state: "s", dHf: -988.0, S: 214.0, source: "CRC", cold: "white" },
  { formula: "Mn(NO3)2", state: "s", dHf: -576.3, source: "CRC", cold: "very pale pink" },
  { formula: "Co(NO3)2", state: "s", dHf: -420.5, source: "CRC", cold: "pink" },
  { formula: "Ni(NO3)2", state: "s", dHf: -415.1, source: "NBS", memory: true, cold: "pale green" },
  { formula: "Cu(NO3)2", state: "s", dHf: -302.9, source: "CRC", cold: "blue-green" },
  { formula: "Zn(NO3)2", state: "s", dHf: -483.7, source: "CRC", cold: "white" },
  { formula: "AgNO3", state: "s", dHf: -124.4, S: 140.9, source: "CRC", cold: "white" },
  { formula: "Pb(NO3)2", state: "s", dHf: -451.9, source: "CRC", cold: "white" },
  { formula: "NaNO2", state: "s", dHf: -358.7, S: 103.8, source: "CRC", cold: "pale yellow" },
  { formula: "KNO2", state: "s", dHf: -369.8, S: 152.1, source: "CRC", cold: "pale yellow" },
  { formula: "LiNO2", state: "s", dHf: -372.4, S: 96.0, source: "CRC", cold: "white" },
];
