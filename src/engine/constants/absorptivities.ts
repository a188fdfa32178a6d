/**
 * How strongly dissolved species colour a solution: molar absorption coefficient in the visible maximum (or, for yellow and brown
 * species, near 450 nm), dm3 mol^-1 cm^-1, good to a factor of two, which is enough to tell "coloured" from "colourless" at bench strength.
 * A species that is not listed is colourless or too weak to see, or no figure is known: Fe[Fe(CN)6](aq) (brown), CuNO2+, Cu(NO2)2 and
 * CuSCN+ (green), [Co(OH)4]^2- (blue).
 */
type Figures = Readonly<Record<string, number>>;

/** Source: textbook spectra, from memory. */
const remembered: Figures = {
  "Cu^2+": 12,
  "CuOH+": 15,
  "Cu(OH)2(aq)": 20,
  "[Cu2(OH)2]^2+": 20,
  "[Cu(OH)3]-": 25,
  "[Cu(OH)4]^2-": 30,
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
  "CrO4^2-": 300,
  "HCrO4-": 180,
  "Cr2O7^2-": 370,
  "MnO4-": 2400,
  "Co^2+": 5,
  "[Co(NH3)3]^2+": 8,
  "[Co(NH3)4]^2+": 9,
  "[Co(NH3)5]^2+": 10,
  "[Co(NH3)6]^2+": 10,
  "Ni^2+": 5,
  "[Ni(NH3)3]^2+": 5,
  "[Ni(NH3)4]^2+": 5,
  "[Ni(NH3)5]^2+": 5,
  "[Ni(NH3)6]^2+": 6,
  "FeSCN^2+": 4700,
  "[Fe(SCN)2]+": 9800,
  "[Fe(CN)6]^3-": 600,
  "[Fe(CN)6]^4-": 2,
  "[FeNO]^2+": 265,
  "N2O3(aq)": 15,
  Br2: 100,
  "Br3-": 150,
  Cl2: 1.5,
  I2: 740,
  "I3-": 900,
};

/** Source: our choice, the figure of the ion (or, of H2CrO4, the anion) above in a pair with it, which hardly changes its spectrum. */
const ofPairs: Figures = {
  "CuSO4(aq)": 12,
  "CuNO3+": 12,
  "FeOH+": 1.1,
  "FeSO4(aq)": 1.1,
  "FeCl+": 1.1,
  "NaCrO4-": 300,
  "KCrO4-": 300,
  H2CrO4: 180,
  "CoCl+": 5,
  "CoSO4(aq)": 5,
  "CoNO3+": 5,
  "NiSO4(aq)": 5,
  "NiCl+": 5,
  "NiNO3+": 5,
  "[KFe(CN)6]^2-": 600,
};

export const ABSORPTIVITY: Figures = { ...remembered, ...ofPairs };
