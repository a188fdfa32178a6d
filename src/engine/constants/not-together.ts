/** Reagents that nobody brings together in one tube, whatever the sample. */
export interface NotTogether {
  readonly reagents: readonly [string, string];
  /** What comes of it, as a half-sentence. */
  readonly gives: string;
  readonly source: string;
}

const CHLORAMINES = "chloramines, toxic gases, and with much chlorine an explosive liquid";
const MEMORY = "general chemistry and school safety rules on hypochlorite with ammonia, from memory";

export const NOT_TOGETHER: readonly NotTogether[] = [
  { reagents: ["Cl2(aq)", "NH3(aq)"], gives: CHLORAMINES, source: MEMORY },
  { reagents: ["Cl2(aq)", "NH4Cl(aq)"], gives: CHLORAMINES, source: MEMORY },
];
