/** Where the constants of the added ions and reagents come from, beside those of sources.ts. */
export const moreSources = {
  minteqDifference:
    "minteq.v4.dat as distributed with PHREEQC, difference of two of its rows: the complex onto NH3, [Fe(CN)6]^4- or [Fe(CN)6]^3- " +
    "instead of NH4+, Fe^2+ or Fe^3+ and cyanide; for O2(g), its row less that of dissolved oxygen",
  martellSmith:
    "A. E. Martell and R. M. Smith, Critical Stability Constants (1976), as tabulated in D. Harvey, Analytical Chemistry 2.1, " +
    "appendix 12: 25 C (cobalt 20 C), ionic strength 0",
  martellSmithRecalled: "A. E. Martell and R. M. Smith, Critical Stability Constants (1976), from memory",
  deBerg2017:
    "K. de Berg, M. Maeder and S. Clifford, Inorg. Chim. Acta 466 (2017) 249: log K1 2.85, log K2 1.51 at 25 C, I = 0",
  wisconsin:
    "Table of solubility products of a university chemistry department (Wisconsin, Chem 109), 25 C; handbook figures",
  crcTabulated: "solubility product of the CRC Handbook as repeated in an open general-chemistry textbook (appendix L)",
  meeussen1992: "J. C. L. Meeussen et al., Environ. Sci. Technol. 26 (1992), Prussian blue in soil, from memory",
  henry: "Henry constants compiled by R. Sander, from memory",
  handbookRecalled: "handbook solubility at 25 C, from memory, with the Davies activity model",
  speciesLiterature: "kinetic and equilibrium literature of the species, from memory",
  formal:
    "formal: no solubility is published for the element or oxide as such; the figure only says that nothing of it is seen dissolved",
  analogy:
    "estimate: mean of the hexacyanidoferrates(II) of cobalt, nickel, copper and zinc of this folder; no published figure known",
} as const;

export type MoreSourceKey = keyof typeof moreSources;
