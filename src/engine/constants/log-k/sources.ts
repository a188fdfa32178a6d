/** Where the constants of this folder come from. Rows name a key; rows taken from memory say so as well. */
export const sources = {
  minteq:
    "minteq.v4.dat as distributed with PHREEQC (US Geological Survey): MINTEQA2 version 4, US EPA, constants mostly from NIST 46",
  minteqRecombined:
    "minteq.v4.dat, recombined onto this basis: log K and enthalpy of the NH4+ or Cr(OH)2+ basis reaction added",
  minteqSignCorrected:
    "minteq.v4.dat, log K recombined onto NH3; the sign of the enthalpy corrected, since the ammine enthalpies as " +
    "distributed are those of NH3 binding with the opposite sign, plus 52 kJ/mol",
  sit: "sit.dat as distributed with PHREEQC (ThermoChimie)",
  llnl: "llnl.dat as distributed with PHREEQC (Lawrence Livermore National Laboratory, thermo.com.V8.R6.230)",
  thermoddem: "PHREEQC_ThermoddemV1.10_15Dec2020.dat (BRGM Thermoddem V1.10)",
  nist46: "NIST Standard Reference Database 46 / Smith & Martell, Critical Stability Constants, from memory",
  crc: "CRC Handbook of Chemistry and Physics, from memory",
  lange: "Lange's Handbook of Chemistry, from memory",
  nordstrom1990: "Nordstrom et al. 1990, microcrystalline gibbsite, from memory",
  handbookSolubility:
    "derived from a handbook solubility (from memory, 0.22 to 0.25 mol/dm3 at 25 C) with the Davies activity model",
  estimate: "rounded estimate, from memory",
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
  bracketed:
    "estimate in the middle of what observations allow: textbook preparations and accounts of the mixture at the bench, from memory",
  analogy:
    "estimate: mean of the hexacyanidoferrates(II) of cobalt, nickel, copper and zinc of this folder; no published figure known",
} as const;

export type SourceKey = keyof typeof sources;
