/** The ions the engine predicts, in the order in which tables print them. mhchem notation. */
export const CATIONS = [
  "NH4+",
  "Na+",
  "K+",
  "Mg^2+",
  "Ca^2+",
  "Ba^2+",
  "Al^3+",
  "Cr^3+",
  "Mn^2+",
  "Fe^2+",
  "Fe^3+",
  "Cu^2+",
  "Zn^2+",
  "Ag+",
  "Pb^2+",
] as const;
export type Cation = (typeof CATIONS)[number];

export const ANIONS = ["CO3^2-", "Cl-", "Br-", "I-", "NO3-", "SO4^2-", "SO3^2-"] as const;
export type Anion = (typeof ANIONS)[number];
