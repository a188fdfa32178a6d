/** As what solid of the school store a salt is weighed out. */
import { salts as store } from "../constants/salts.ts";
import type { Content } from "./salt.ts";

/** A solid in a jar: its formula, water of crystallisation included, and the ions of one formula unit. */
export interface WeighedSolid {
  formula: string;
  ions: Readonly<Record<string, number>>;
}

/**
 * The bottle of the school store that is meant by the salt, or the salt without water where no store keeps it.
 *
 * @example weighedAs(saltOf("Cu^2+", "SO4^2-")).formula // "CuSO4*5H2O"
 * @example weighedAs(saltOf("Cu^2+", "CO3^2-")).formula // "CuCO3*Cu(OH)2"
 */
export const weighedAs = (salt: Content): WeighedSolid =>
  store.find(({ ions, standsFor }) => standsFor === salt.formula || sameIons(ions, salt.ions)) ?? salt;

/** Its formula alone. */
export const solidForm = (salt: Content): string => weighedAs(salt).formula;

function sameIons(a: Readonly<Record<string, number>>, b: Readonly<Record<string, number>>): boolean {
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((ion) => a[ion] === b[ion]);
}
