/**
 * Activity coefficients: Davies for ions, log10 gamma = 0.1 I for neutral species, water activity 1 - 0.017 sum(m).
 *
 * Reference: C. W. Davies, Ion Association (1962); the forms for neutral species and water are those of PHREEQC (USGS), with which the
 * solver is checked. Validity: Davies holds to I of about 0.5 mol/kg; above that the coefficient bends upwards without physical
 * reason, so production caps I at CAPPED_IONIC_STRENGTH inside the coefficient. Checks against PHREEQC switch the cap off.
 */

/** Davies' A at 25 C, kg^0.5 mol^-0.5 (PHREEQC 3.8.9, from its water permittivity). */
const DAVIES_A_25 = 0.5100247894124;

/** Ionic strength above which the Davies coefficient is held, mol/kg (usual limit of the Davies equation; Stumm and Morgan, from memory). */
export const CAPPED_IONIC_STRENGTH = 0.5;

const KELVIN = 273.15;

/** Relative permittivity of water at t C: 87.740 - 0.40008 t + 9.398e-4 t^2 - 1.410e-6 t^3 (Malmberg and Maryott 1956, from memory). */
const permittivity = (celsius: number) => 87.74 - 0.40008 * celsius + 9.398e-4 * celsius ** 2 - 1.41e-6 * celsius ** 3;

/** Davies' A at a temperature, scaled from 25 C by (eps T)^-1.5. */
export function daviesA(celsius: number): number {
  const here = permittivity(celsius) * (celsius + KELVIN);
  const at25 = permittivity(25) * (25 + KELVIN);
  return DAVIES_A_25 * (here / at25) ** -1.5;
}

/** Davies function and its slope: log10 gamma = -A z^2 f(I); f = sqrt(I)/(1+sqrt(I)) - 0.3 I. */
export function davies(
  ionicStrength: number,
  cap: number,
): { f: number; slope: number; neutral: number; neutralSlope: number } {
  const held = ionicStrength > cap;
  const I = Math.max(held ? cap : ionicStrength, 1e-12);
  const root = Math.sqrt(I);
  return {
    f: root / (1 + root) - 0.3 * I,
    slope: held ? 0 : 1 / (2 * root * (1 + root) ** 2) - 0.3,
    neutral: 0.1 * I,
    neutralSlope: held ? 0 : 0.1,
  };
}

/** Fall of water activity for each mole of solute per kg (PHREEQC's form). */
export const WATER_ACTIVITY_SLOPE = 0.017;

/** Natural log of water activity for a total molality of solutes; held above one half so that a wild trial step stays finite. */
export const lnWaterActivity = (solutes: number) => Math.log(Math.max(1 - WATER_ACTIVITY_SLOPE * solutes, 0.5));
