/**
 * Molar absorption coefficients of the added coloured species, in the sense and with the (un)certainty of absorptivities.ts: visible
 * maximum, or near 450 nm for yellow and brown species, dm3 mol^-1 cm^-1, from memory of textbook spectra, good to a factor of two.
 * Left out for want of a figure: Fe[Fe(CN)6](aq) (brown), N2O3 (pale blue), CuNO2+, Cu(NO2)2 and CuSCN+ (green), [Co(OH)4]^2- (blue).
 */
export const MORE_ABSORPTIVITY: Readonly<Record<string, number>> = {
  "CrO4^2-": 300,
  "NaCrO4-": 300,
  "KCrO4-": 300,
  "HCrO4-": 180,
  H2CrO4: 180,
  "Cr2O7^2-": 370,
  "MnO4-": 2400,
  "Co^2+": 5,
  "CoCl+": 5,
  "CoSO4(aq)": 5,
  "CoNO3+": 5,
  "[Co(NH3)3]^2+": 8,
  "[Co(NH3)4]^2+": 9,
  "[Co(NH3)5]^2+": 10,
  "[Co(NH3)6]^2+": 10,
  "Ni^2+": 5,
  "NiSO4(aq)": 5,
  "NiCl+": 5,
  "NiNO3+": 5,
  "[Ni(NH3)3]^2+": 5,
  "[Ni(NH3)4]^2+": 5,
  "[Ni(NH3)5]^2+": 5,
  "[Ni(NH3)6]^2+": 6,
  "FeSCN^2+": 4700,
  "[Fe(SCN)2]+": 9800,
  "[Fe(CN)6]^3-": 600,
  "[KFe(CN)6]^2-": 600,
  "[Fe(CN)6]^4-": 2,
  "[FeNO]^2+": 265,
  Br2: 100,
  "Br3-": 150,
  Cl2: 1.5,
};
