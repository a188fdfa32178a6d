/**
 * Enthalpy of hydrolysis for each proton a hydrated ion sets free, kJ/mol: the sum of the enthalpies over the sum of the
 * protons, over the mononuclear hydroxo complexes of this folder whose enthalpy comes from the source of their log K (a test recomputes it). Without it, complexes such as [Zn(OH)4]^2- would seem to fall apart on warming only
 * because nobody measured them.
 */
export const HYDROLYSIS_ENTHALPY = {
  value: 49,
  unit: "kJ/mol",
  source: "mean of the published values in this folder",
} as const;
