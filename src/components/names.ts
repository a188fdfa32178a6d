/** Names of ions and salts beside their formulas. The names come with the page, so that an island need not carry the whole table. */
import { salt } from "#words/salt-name.ts";
import type { SaltEntry } from "../engine/bench/prediction-table.ts";

/** Names of the ions a page speaks of, by formula: { "Zn^2+": "zinc" }. */
export type IonNames = Readonly<Record<string, string>>;

/** "zinc (Zn^2+)"; the formula alone when it has no name here. */
export const withName = (ion: string, names: IonNames): string => (names[ion] ? `${names[ion]} (${ion})` : ion);

/** "zinc sulfate"; "ammonium and iron(II) sulfate" for a salt or mixture of several ions. */
export const saltWords = ({ cations, anions }: SaltEntry, names: IonNames): string => {
  const named = (ions: readonly string[]) => ions.map((ion) => names[ion] ?? ion);
  return salt(named(cations), named(anions));
};
