/** What the school store's list says of salts that are not simply harmless: to be read before they are given out. */
import { saidOnSheet } from "#words/class-recipes.ts";
import { said } from "#words/constants.ts";
import { saltOf } from "../bench/salt.ts";
import { NOT_HEATED } from "../constants/heating.ts";
import { type Salt, salts as store } from "../constants/salts.ts";

export interface StoreHazard {
  /** Of the bottle; where the store's list has the salt and does not simply call it of low hazard. */
  bottle?: string;
  /** Why the dry salt is not heated in class. */
  heat?: string;
}

/** The store's whole sentence for a salt without anything to say. */
const HARMLESS = "Low hazard.";

/**
 * What is known of a salt or mixture by its ions; undefined where nothing speaks against it, and also where nothing is known: a salt that
 * no store keeps has no row.
 */
export function storeHazard({
  cations,
  anions,
}: {
  cations: readonly string[];
  anions: readonly string[];
}): StoreHazard | undefined {
  const ions = [...cations, ...anions];
  const simple = ions.length === 2 ? saltOf(cations[0], anions[0]).formula : undefined;
  const isOf = (row: Salt) =>
    [...row.cations, ...row.anions].length === ions.length && ions.every((ion) => row.ions[ion]);
  const hazards = store
    .filter((row) => isOf(row) || (row.standsFor !== undefined && row.standsFor === simple))
    .map(({ hazard }) => hazard)
    .filter((hazard) => hazard !== HARMLESS);
  const heat = NOT_HEATED.find((one) => one.ions.every((ion) => ions.includes(ion)))?.reason;
  if (hazards.length === 0 && heat === undefined) return undefined;
  return {
    ...(hazards.length > 0 && { bottle: [...new Set(hazards)].map(saidOnSheet).join(" ") }),
    ...(heat && { heat: said(heat) }),
  };
}
