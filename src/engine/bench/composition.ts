/** What a salt or a reagent brings into the tube, in basis components: hydroxide counts as water less a proton. */
import { basis } from "../constants/log-k/index.ts";

/** Moles of each basis component (and bound water, "H2O"). */
export type Components = Record<string, number>;

/** Ions that are not basis components themselves. */
const MADE_OF: Readonly<Record<string, Components>> = {
  "OH-": { "H+": -1, H2O: 1 },
  "O^2-": { "H+": -2, H2O: 1 },
  "NH4+": { NH3: 1, "H+": 1 },
  "HCO3-": { "CO3^2-": 1, "H+": 1 },
  "HSO4-": { "SO4^2-": 1, "H+": 1 },
};
const KNOWN = new Set(basis.map(({ id }) => id));

/** True when the engine has constants for an ion or molecule. */
export const hasConstants = (ion: string): boolean => Object.hasOwn(MADE_OF, ion) || KNOWN.has(ion);

/** Adds `moles` of an ion or molecule to a count of components. Throws a RangeError when the constants know nothing of it. */
export function addIon(to: Components, ion: string, moles: number): void {
  if (!hasConstants(ion)) throw new RangeError(`the engine has no constants for ${ion}`);
  const parts = KNOWN.has(ion) ? { [ion]: 1 } : MADE_OF[ion];
  for (const [id, count] of Object.entries(parts)) to[id] = (to[id] ?? 0) + count * moles;
}

/** Components of one mole of something that gives these ions. */
export function componentsOf(ions: Readonly<Record<string, number>>): Components {
  const components: Components = {};
  for (const [ion, count] of Object.entries(ions)) addIon(components, ion, count);
  return components;
}
