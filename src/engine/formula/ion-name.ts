import { ionNames } from "#words/ion-names.ts";
import { salt } from "#words/salt-name.ts";

/** An ion whose name the table does not hold. */
export class UnknownIonError extends Error {
  readonly ion: string;

  constructor(ion: string, expected = "an ion of the table of names, written like Fe^2+, NH4+ or SO4^2-") {
    super(`No name for the ion "${ion}": expected ${expected}.`);
    this.name = "UnknownIonError";
    this.ion = ion;
  }
}

/**
 * The name of an ion in the language of the site, in English the IUPAC name, without the word "ion".
 *
 * @throws {UnknownIonError}
 * @example ionName("Fe^2+") // "iron(II)"
 */
export function ionName(ion: string): string {
  if (!Object.hasOwn(ionNames, ion)) throw new UnknownIonError(ion);
  return ionNames[ion];
}

/**
 * The name of a salt of one cation and one anion, water of crystallisation not counted.
 *
 * @throws {UnknownIonError} also when the two are given the wrong way round.
 * @example saltName("NH4+", "SO4^2-") // "ammonium sulfate"
 */
export function saltName(cation: string, anion: string): string {
  if (!cation.endsWith("+")) throw new UnknownIonError(cation, "a cation such as Fe^2+ before the anion");
  if (!anion.endsWith("-")) throw new UnknownIonError(anion, "an anion such as SO4^2- after the cation");
  return salt([ionName(cation)], [ionName(anion)]);
}
