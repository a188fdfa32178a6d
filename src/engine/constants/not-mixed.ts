/** What is not brought together in a class tube, because a very toxic gas may come off. Defer to the teacher in charge and the local rules. */

export interface NotMixed {
  /** One of each group, as reagents bring it or samples may hold it; "H+" stands for any acid. An id names a reagent: no sample counts for it. */
  together: readonly (readonly string[])[];
  /** Only when the mixture is warmed or boiled, or made in a hot tube. */
  heated: boolean;
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
/** The reagent, not its ions: the chloride of a sample with sulfuric acid is the usual test, and gives no chlorine to speak of. */
const HYDROCHLORIC = ["HCl(aq)"];

export const NOT_MIXED: readonly NotMixed[] = [
  {
    together: [["[Fe(CN)6]^4-", "[Fe(CN)6]^3-"], ACIDS],
    heated: true,
    refused: true,
    what: "a hexacyanoferrate and hot acid",
    reason: "they can give off hydrogen cyanide, which is very toxic",
    source:
      "a supplier's data sheet of potassium hexacyanoferrate(II), read: acid or strong heat may set hydrogen cyanide free; that dilute acid must be hot, from memory",
  },
  {
    together: [["SCN-"], ACIDS],
    heated: true,
    refused: true,
    what: "a thiocyanate and hot acid",
    reason: "they can give off hydrogen cyanide and other very toxic gases",
    source:
      "a supplier's safety data sheet of potassium thiocyanate (2012), read: contact with acids liberates very toxic gas (EUH032 of CLP); that dilute acid must be hot, from memory",
  },
  {
    together: [["SCN-"], ["H2O2", "MnO4-", "CrO4^2-"], ACIDS],
    heated: false,
    refused: false,
    what: "a thiocyanate and an oxidising agent in acid",
    reason: "they can give off hydrogen cyanide, which is very toxic",
    source:
      "from memory: acidified peroxide, manganate(VII) and chromium(VI) oxidise thiocyanate to hydrogen cyanide and sulfate",
  },
  {
    together: [["SCN-"], ["Cl2"]],
    heated: false,
    refused: true,
    what: "a thiocyanate and chlorine water",
    reason: "they can give off cyanogen chloride, which is very toxic",
    source: "from memory: chlorine in water oxidises thiocyanate to sulfate and cyanogen chloride",
  },
  {
    together: [["Cl2"], ["NH3", "NH4+"]],
    heated: false,
    refused: true,
    what: "chlorine water and ammonia",
    reason: "they give chloramines, which are toxic to breathe and can explode when concentrated",
    source: "common practice, no source",
  },
  {
    together: [MANGANATE, HYDROCHLORIC],
    heated: false,
    refused: false,
    what: "manganate(VII) and hydrochloric acid",
    reason: "they can give off chlorine, which is toxic to breathe: sulfuric acid does not",
    source: "from memory (common school safety advice); E of MnO4-/Mn2+, 1.51 V, is above that of Cl2/Cl-, 1.36 V",
  },
  {
    together: [MANGANATE, HYDROCHLORIC],
    heated: true,
    refused: true,
    what: "manganate(VII) and hot hydrochloric acid",
    reason: "they give off chlorine, which is toxic to breathe",
    source: "from memory (common school safety advice): heat makes fast what is slow in dilute acid",
  },
];
