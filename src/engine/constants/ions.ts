/** The ions the engine predicts, in the order in which tables print them, and two lists a paper may name. mhchem notation. */
export const CATIONS = [
  "NH4+",
  "Li+",
  "Na+",
  "K+",
  "Mg^2+",
  "Ca^2+",
  "Sr^2+",
  "Ba^2+",
  "Al^3+",
  "Cr^3+",
  "Mn^2+",
  "Fe^2+",
  "Fe^3+",
  "Co^2+",
  "Ni^2+",
  "Cu^2+",
  "Zn^2+",
  "Ag+",
  "Pb^2+",
] as const;

export const ANIONS = [
  "CO3^2-",
  "HCO3-",
  "Cl-",
  "Br-",
  "I-",
  "NO3-",
  "NO2-",
  "SO4^2-",
  "SO3^2-",
  "S2O3^2-",
  "CrO4^2-",
  "OH-",
  "O^2-",
] as const;

export interface IonList {
  cations: readonly (typeof CATIONS)[number][];
  anions: readonly (typeof ANIONS)[number][];
}

/** Lists a paper may name instead of writing its ions out. Our choice, after the boards' notes for the two levels (from memory). */
export const ION_LISTS: Readonly<Record<"school" | "advanced", IonList>> = {
  school: {
    cations: [
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
    ],
    anions: ["CO3^2-", "Cl-", "Br-", "I-", "NO3-", "SO4^2-", "SO3^2-"],
  },
  advanced: { cations: CATIONS, anions: ANIONS.filter((ion) => ion !== "OH-" && ion !== "O^2-") },
};
