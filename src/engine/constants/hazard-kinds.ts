/** The kinds of harm a caution may name, worst first: the words a reader chooses among when looking for all that is corrosive, say. */
export const HAZARD_KINDS = [
  "toxic",
  "corrosive",
  "cancer or allergy",
  "damages eyes",
  "hurts lungs",
  "flammable",
  "feeds a fire",
  "spurts or froths",
  "heat",
  "irritant",
  "harms water life",
  "stains",
  "low hazard",
] as const;

export type HazardKind = (typeof HAZARD_KINDS)[number];
