/** What tap water and old bottles hold that nobody put there. */
export interface Impurity {
  value: number;
  unit: "mol/dm3" | "1";
  source: string;
}

export const IMPURITIES = {
  /** Chloride of ordinary tap water: 20 mg/dm3. */
  tapChloride: {
    value: 20e-3 / 35.45,
    unit: "mol/dm3",
    source: "common practice, no source: tap water holds about 10 to 100 mg/dm3 of chloride; the low end is taken",
  },
  /** Part of an alkali that the air has turned into carbonate, mol for mol. */
  oldAlkali: {
    value: 1e-3,
    unit: "1",
    source: "common practice, no source: some tenths of a per cent in a bottle opened for weeks; the low end is taken",
  },
  /** Carbonate in sodium hydroxide as pure as it is sold, mol for mol: more than the air brings. Ammonia is sold with hardly any. */
  soldSodiumHydroxide: {
    value: (0.01 * 40) / 106,
    unit: "1",
    source:
      "limit of the American Chemical Society for reagent grade, from memory: 1.0 % of the mass as sodium carbonate",
  },
} as const satisfies Record<string, Impurity>;
