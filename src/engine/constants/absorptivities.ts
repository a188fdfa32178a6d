import { MORE_ABSORPTIVITY } from "./more-absorptivities.ts";

/**
 * How strongly dissolved species colour a solution: molar absorption coefficient in the visible maximum (or, for yellow and brown
 * species, near 450 nm), dm3 mol^-1 cm^-1. All from memory of textbook spectra, good to a factor of two, which is enough to tell
 * "coloured" from "colourless" at bench strength. A species that is not listed is colourless or too weak to see.
 */
export const ABSORPTIVITY: Readonly<Record<string, number>> = {
  "Cu^2+": 12,
  "CuOH+": 15,
  "Cu(OH)2(aq)": 20,
  "[Cu2(OH)2]^2+": 20,
  "[Cu(OH)3]-": 25,
  "[Cu(OH)4]^2-": 30,
  "CuSO4(aq)": 12,
  "CuNO3+": 12,
  "CuCl+": 15,
  "CuCl2(aq)": 20,
  "[CuCl3]-": 40,
  "[CuCl4]^2-": 60,
  "CuCO3(aq)": 20,
  "[Cu(NH3)]^2+": 20,
  "[Cu(NH3)2]^2+": 35,
  "[Cu(NH3)3]^2+": 50,
  "[Cu(NH3)4]^2+": 55,
  "Cr^3+": 15,
  "CrOH^2+": 18,
  "[Cr(OH)2]+": 20,
  "Cr(OH)3(aq)": 20,
  "[Cr(OH)4]-": 25,
  "Fe^2+": 1.1,
  "FeOH+": 1.1,
  "FeSO4(aq)": 1.1,
  "FeCl+": 1.1,
  "FeOH^2+": 12,
  "[Fe(OH)2]+": 20,
  "[Fe2(OH)2]^4+": 60,
  "[Fe3(OH)4]^5+": 80,
  "FeCl^2+": 30,
  "[FeCl2]+": 50,
  "FeCl3(aq)": 50,
  "FeSO4+": 6,
  "[Fe(SO4)2]-": 8,
  "Mn^2+": 0.02,
  ...MORE_ABSORPTIVITY,
  I2: 740,
  "I3-": 900,
};
