/** The one number behind a prediction. Formulas in mhchem notation, figures with a decimal point. */

const at = (where: "limewater" | undefined) => (where ? " in the limewater" : "");
/** @param where it happens, if not in the tube itself */
export const dissolves = (percent: number, what: string, where: "limewater" | undefined) =>
  `${percent} % of the ${what} dissolves${at(where)}`;
export const perDm3 = (grams: string, what: string, where: "limewater" | undefined) =>
  `${grams} g/dm3 of ${what}${at(where)}`;
export const ofGas = (cm3: string, what: string) => `${cm3} cm3 of ${what}`;
export const above = (what: string, ppm: string) => `${what} at ${ppm} ppm above the liquid`;
