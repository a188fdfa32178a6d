import type { SubstanceRow } from "./row.ts";

/**
 * Hydrates. Most figures are remembered from the NBS tables, which give no entropy for some of them. Without any figures, so left out:
 * Al2(SO4)3*16H2O, KCr(SO4)2*12H2O, CrCl3*6H2O, (NH4)2Fe(SO4)2*6H2O, NH4Fe(SO4)2*12H2O.
 */
export const hydrates: readonly SubstanceRow[] = [
  { formula: "MgSO4*7H2O", state: "s", dHf: -3388.71, S: 372.0, source: "NBS", memory: true, cold: "colourless" },
  { formula: "MgSO4*6H2O", state: "s", dHf: -3087.0, S: 348.1, source: "NBS", memory: true, cold: "white" },
  { formula: "MgSO4*H2O", state: "s", dHf: -1602.1, S: 126.4, source: "NBS", memory: true, cold: "white" },
  { formula: "CaSO4*2H2O", state: "s", dHf: -2022.63, S: 194.1, source: "NBS", memory: true, cold: "white" },
  { formula: "CaSO4*0.5H2O", state: "s", dHf: -1576.74, S: 130.5, source: "NBS", memory: true, cold: "white" },
  { formula: "ZnSO4*7H2O", state: "s", dHf: -3077.75, S: 388.7, source: "NBS", memory: true, cold: "colourless" },
  { formula: "ZnSO4*6H2O", state: "s", dHf: -2777.46, S: 363.6, source: "NBS", memory: true, cold: "white" },
  { formula: "ZnSO4*H2O", state: "s", dHf: -1304.49, S: 138.5, source: "NBS", memory: true, cold: "white" },
  { formula: "CuSO4*5H2O", state: "s", dHf: -2279.65, S: 300.4, source: "NBS", memory: true, cold: "blue" },
  { formula: "CuSO4*3H2O", state: "s", dHf: -1684.31, S: 221.3, source: "NBS", memory: true, cold: "light blue" },
  { formula: "CuSO4*H2O", state: "s", dHf: -1085.83, S: 146.0, source: "NBS", memory: true, cold: "pale blue-white" },
  { formula: "FeSO4*7H2O", state: "s", dHf: -3014.57, S: 409.2, source: "NBS", memory: true, cold: "pale green" },
  { formula: "FeSO4*H2O", state: "s", dHf: -1243.69, source: "NBS", memory: true, cold: "off-white" },
  { formula: "MnSO4*H2O", state: "s", dHf: -1376.5, source: "NBS", memory: true, cold: "very pale pink" },
  { formula: "NiSO4*6H2O", state: "s", dHf: -2682.82, S: 334.47, source: "NBS", memory: true, cold: "blue-green" },
  { formula: "NiSO4*7H2O", state: "s", dHf: -2976.33, S: 378.94, source: "NBS", memory: true, cold: "green" },
  { formula: "CoSO4*7H2O", state: "s", dHf: -2979.93, S: 406.06, source: "NBS", memory: true, cold: "pink" },
  { formula: "CoSO4*6H2O", state: "s", dHf: -2683.6, S: 367.61, source: "NBS", memory: true, cold: "pink" },
  { formula: "KAl(SO4)2*12H2O", state: "s", dHf: -6061.8, S: 687.4, source: "NBS", memory: true, cold: "colourless" },
  { formula: "KAl(SO4)2*3H2O", state: "s", dHf: -3381.1, S: 314.2, source: "NBS", memory: true, cold: "white" },

  { formula: "MgCl2*6H2O", state: "s", dHf: -2499.02, S: 366.1, source: "NBS", memory: true, cold: "white" },
  { formula: "MgCl2*4H2O", state: "s", dHf: -1898.99, S: 264.0, source: "NBS", memory: true, cold: "white" },
  { formula: "MgCl2*2H2O", state: "s", dHf: -1279.72, S: 179.9, source: "NBS", memory: true, cold: "white" },
  { formula: "MgCl2*H2O", state: "s", dHf: -966.63, S: 137.2, source: "NBS", memory: true, cold: "white" },
  { formula: "CaCl2*6H2O", state: "s", dHf: -2607.9, source: "NBS", memory: true, cold: "colourless" },
  { formula: "CaCl2*2H2O", state: "s", dHf: -1402.9, source: "NBS", memory: true, cold: "white" },
  { formula: "BaCl2*2H2O", state: "s", dHf: -1456.9, S: 203.0, source: "CRC", cold: "colourless" },
  { formula: "AlCl3*6H2O", state: "s", dHf: -2691.6, S: 318.0, source: "NBS", memory: true, cold: "white" },
  { formula: "MnCl2*4H2O", state: "s", dHf: -1687.4, S: 303.3, source: "NBS", memory: true, cold: "pink" },
  { formula: "MnCl2*2H2O", state: "s", dHf: -1092.0, S: 218.8, source: "NBS", memory: true, cold: "pink" },
  { formula: "MnCl2*H2O", state: "s", dHf: -789.9, S: 174.1, source: "NBS", memory: true, cold: "pink" },
  { formula: "FeCl2*4H2O", state: "s", dHf: -1549.3, source: "NBS", memory: true, cold: "pale green" },
  { formula: "FeCl3*6H2O", state: "s", dHf: -2223.8, source: "NBS", memory: true, cold: "yellow-brown" },
  { formula: "CoCl2*6H2O", state: "s", dHf: -2115.4, S: 343.0, source: "NBS", memory: true, cold: "pink" },
  { formula: "CoCl2*2H2O", state: "s", dHf: -922.99, S: 188.0, source: "NBS", memory: true, cold: "violet" },
  { formula: "NiCl2*6H2O", state: "s", dHf: -2103.17, S: 344.3, source: "NBS", memory: true, cold: "green" },
  { formula: "NiCl2*2H2O", state: "s", dHf: -922.2, S: 176.0, source: "NBS", memory: true, cold: "pale green" },
  { formula: "CuCl2*2H2O", state: "s", dHf: -821.3, S: 167.0, source: "NBS", memory: true, cold: "blue-green" },

  { formula: "Mg(NO3)2*6H2O", state: "s", dHf: -2613.28, S: 452.0, source: "NBS", memory: true, cold: "colourless" },
  { formula: "Ca(NO3)2*4H2O", state: "s", dHf: -2132.33, S: 375.3, source: "NBS", memory: true, cold: "colourless" },
  { formula: "Al(NO3)3*9H2O", state: "s", dHf: -3757.06, S: 569.0, source: "NBS", memory: true, cold: "colourless" },
  { formula: "Fe(NO3)3*9H2O", state: "s", dHf: -3285.3, source: "NBS", memory: true, cold: "pale violet" },
  { formula: "Co(NO3)2*6H2O", state: "s", dHf: -2211.2, source: "NBS", memory: true, cold: "pink" },
  { formula: "Ni(NO3)2*6H2O", state: "s", dHf: -2211.7, source: "NBS", memory: true, cold: "green" },
  { formula: "Cu(NO3)2*3H2O", state: "s", dHf: -1217.1, source: "NBS", memory: true, cold: "blue" },
  { formula: "Zn(NO3)2*6H2O", state: "s", dHf: -2306.64, S: 456.9, source: "NBS", memory: true, cold: "colourless" },

  { formula: "Na2S2O3*5H2O", state: "s", dHf: -2607.93, S: 372.4, source: "NBS", memory: true, cold: "colourless" },
];
