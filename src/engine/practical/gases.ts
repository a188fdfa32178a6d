/** The gases of a school practical, and what shows each. Apart from the schemas, for the bench runs without zod. */
import type { GasTest } from "./step.ts";

/** Gases a school practical tests for. */
export const GASES = ["NH3", "CO2", "SO2", "H2", "O2", "Cl2", "NO2", "HCl", "H2O"] as const;
export type Gas = (typeof GASES)[number];

/** Gases and vapours no practical tests for, which a heated salt or a tube may give off and which can harm: told in cautions, never recorded. */
export const UNTESTED_GASES = ["SO3", "HBr", "HI", "H2S", "Br2", "I2"] as const;
/** Whatever may come off that a person must be ready for. */
export type GivenOff = Gas | (typeof UNTESTED_GASES)[number];
/** Those that hurt eyes and lungs in the amounts of a test tube: rank 0 of constants/gas-safety.ts (a test holds the two together). */
export const HARMFUL_GASES: readonly GivenOff[] = ["NH3", "SO2", "Cl2", "NO2", "HCl", ...UNTESTED_GASES];

/** The usual evidence for each gas: the words credited when an author gives only the formula. Sources: boards' gas tables. */
export const GAS_EVIDENCE: Record<Gas, string> = {
  NH3: "damp red litmus turns blue",
  CO2: "limewater turns milky",
  SO2: "acidified manganate(VII) paper turns from purple to colourless",
  H2: "lighted splint gives a squeaky pop",
  O2: "glowing splint relights",
  Cl2: "damp litmus is bleached",
  NO2: "brown gas",
  HCl: "damp blue litmus turns red",
  H2O: "anhydrous copper(II) sulfate turns blue",
};

/** What more gas does to clouded limewater when it is led through in excess. */
export const CLEARS_AGAIN = "limewater turns milky, then clear in excess";

/** Ways of testing for water, which are no use over a tube that holds some. */
export const WATER_TESTS: readonly GasTest[] = ["anhydrous copper(II) sulfate", "cobalt(II) chloride paper"];
