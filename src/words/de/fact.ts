/** The one number behind a prediction. Formulas in mhchem notation, figures with a decimal point. */

const at = (where: "limewater" | undefined) => (where ? " im Kalkwasser" : "");
/** @param where it happens, if not in the tube itself */
export const dissolves = (percent: number, what: string, where: "limewater" | undefined) =>
  `${percent} % von ${what} lösen sich${at(where)}`;
export const perDm3 = (grams: string, what: string, where: "limewater" | undefined) =>
  `${grams} g/dm3 ${what}${at(where)}`;
export const ofGas = (cm3: string, what: string) => `${cm3} cm3 ${what}`;
export const above = (what: string, ppm: string) => `${what}, ${ppm} ppm über der Flüssigkeit`;
