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
} as const;

export type SourceKey = keyof typeof sources;
