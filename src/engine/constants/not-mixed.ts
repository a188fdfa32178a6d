/**
 * What is not brought together in a class tube, because a very toxic gas may come off or something that explodes may form. Defer to the
 * teacher in charge and the local rules.
 */

export interface NotMixed {
  /** One of each group, as reagents bring it or samples may hold it; "H+" stands for any acid. An id names a reagent: no sample counts for it. */
  together: readonly (readonly string[])[];
  /** "hot": only when the mixture is warmed or boiled, or made in a hot tube; "hot or left": when it is let stand as well. */
  when: "at once" | "hot" | "hot or left";
  /** No practical may ask for it; else the plan warns, for drops of such mixtures are common in schools. */
  refused: boolean;
  /** In words: "a hexacyanoferrate and hot acid". */
  what: string;
  /** What comes off. */
  reason: string;
  source: string;
}

const ACIDS = ["H+", "CH3COOH"];
const MANGANATE = ["MnO4-"];
const TRIIODIDE = {
  when: "at once",
  refused: false,
  what: "iodine and ammonia",
  reason: "a dark solid may come down, nitrogen triiodide, which explodes at a touch once it is dry",
  source: "textbooks and school safety notes, from memory",
} as const;
/** An ammonium salt in alkali is ammonia. */
const AMMONIUM_IN_ALKALI = [["NH4+"], ["OH-"]];
const TRIIODIDE_ON_THE_WAY = {
  ...TRIIODIDE,
  what: "iodide, something that sets iodine free from it, and ammonia",
  source: "as iodine and ammonia; what frees iodine: textbook, from memory (potentials.ts, redox-gates.ts)",
} as const;
const SILVER_AMMINE = {
  when: "hot or left",
  refused: false,
  what: "silver and ammonia, heated or left to stand",
  reason: "a black solid can form from them that explodes even when wet",
  source:
    "G. S. Klinger, R. D. Scheele and M. J. Steele, Chemical & Engineering News, 8 January 1996, p. 2, read: such a solution exploded when rinsed; older, hot and strongly alkaline ones are worse, from memory",
} as const;
/** The reagent, not its ions: the chloride of a sample with sulfuric acid is the usual test, and gives no chlorine to speak of. */
const HYDROCHLORIC = ["HCl(aq)"];

export const NOT_MIXED: readonly NotMixed[] = [
  {
    together: [["[Fe(CN)6]^4-", "[Fe(CN)6]^3-"], ACIDS],
    when: "hot",
    refused: true,
    what: "a hexacyanoferrate and hot acid",
    reason: "they can give off hydrogen cyanide, which is very toxic",
    source:
      "a supplier's data sheet of potassium hexacyanoferrate(II), read: acid or strong heat may set hydrogen cyanide free; that dilute acid must be hot, from memory",
  },
  {
    together: [["SCN-"], ACIDS],
    when: "hot",
    refused: true,
    what: "a thiocyanate and hot acid",
    reason: "they can give off hydrogen cyanide and other very toxic gases",
    source:
      "a supplier's safety data sheet of potassium thiocyanate (2012), read: contact with acids liberates very toxic gas (EUH032 of CLP); that dilute acid must be hot, from memory",
  },
  {
    together: [["SCN-"], ["H2O2", "MnO4-", "CrO4^2-", "NO2-"], ACIDS],
    when: "at once",
    refused: false,
    what: "a thiocyanate and an oxidising agent in acid",
    reason: "they can give off hydrogen cyanide, which is very toxic",
    source:
      "from memory: acidified peroxide, manganate(VII) and chromium(VI) oxidise thiocyanate to hydrogen cyanide and sulfate; that nitrous acid, which turns it red, may do so too, from memory",
  },
  {
    together: [["SCN-"], ["Cl2"]],
    when: "at once",
    refused: true,
    what: "a thiocyanate and chlorine water",
    reason: "they can give off cyanogen chloride, which is very toxic",
    source: "from memory: chlorine in water oxidises thiocyanate to sulfate and cyanogen chloride",
  },
  {
    together: [["Cl2"], ["NH3", "NH4+"]],
    when: "at once",
    refused: true,
    what: "chlorine water and ammonia",
    reason: "they give chloramines, which are toxic to breathe and can explode when concentrated",
    source: "common practice, no source",
  },
  {
    together: [MANGANATE, HYDROCHLORIC],
    when: "at once",
    refused: false,
    what: "manganate(VII) and hydrochloric acid",
    reason: "they can give off chlorine, which is toxic to breathe: sulfuric acid does not",
    source: "from memory (common school safety advice); E of MnO4-/Mn2+, 1.51 V, is above that of Cl2/Cl-, 1.36 V",
  },
  {
    together: [MANGANATE, HYDROCHLORIC],
    when: "hot",
    refused: true,
    what: "manganate(VII) and hot hydrochloric acid",
    reason: "they give off chlorine, which is toxic to breathe",
    source: "from memory (common school safety advice): heat makes fast what is slow in dilute acid",
  },
  { together: [["I2"], ["NH3"]], ...TRIIODIDE },
  { together: [["I2"], ...AMMONIUM_IN_ALKALI], ...TRIIODIDE },
  // No sample holds iodide and what oxidises it: one of the two comes out of a bottle.
  { together: [["KI(aq)"], ["Fe^3+", "Cu^2+"], ["NH3"]], ...TRIIODIDE_ON_THE_WAY },
  { together: [["KI(aq)"], ["CrO4^2-", "NO2-"], ACIDS, ["NH3"]], ...TRIIODIDE_ON_THE_WAY },
  { together: [["I-"], ["H2O2", "MnO4-"], ["NH3"]], ...TRIIODIDE_ON_THE_WAY },
  { together: [["I-"], ["H2O2", "MnO4-"], ...AMMONIUM_IN_ALKALI], ...TRIIODIDE_ON_THE_WAY },
  { together: [["I-"], ["K2CrO4(aq)", "acidified K2Cr2O7(aq)"], ACIDS, ["NH3"]], ...TRIIODIDE_ON_THE_WAY },
  { together: [["Ag+"], ["NH3"]], ...SILVER_AMMINE },
  // Nor is a sample both a silver and an ammonium salt.
  { together: [["AgNO3(aq)"], ...AMMONIUM_IN_ALKALI], ...SILVER_AMMINE },
  { together: [["Ag+"], ["NH4Cl(aq)"], ["OH-"]], ...SILVER_AMMINE },
  {
    together: [["SO3^2-", "S2O3^2-"], ["Zn(s)"], ACIDS],
    when: "at once",
    refused: false,
    what: "a sulfite or thiosulfate, zinc and acid",
    reason: "they give off hydrogen sulfide, which is very toxic",
    source:
      "textbooks of qualitative analysis (Vogel: a test for sulfite), from memory; not refused: class amounts in a fume cupboard, our choice",
  },
];
