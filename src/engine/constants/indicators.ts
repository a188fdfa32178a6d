/**
 * Indicators that are touched with a drop of the liquid. Each has bands of pH, from the acid end, with the colour in each; a band ends
 * where the next begins, the last one goes on. Colours are names of colours.ts.
 */
export interface IndicatorRow {
  bands: readonly { below: number; colour: "red" | "purple" | "blue" | "orange" | "yellow" | "green" | "violet" }[];
  /** How it is used at the bench. */
  form: string;
  source: string;
}

const rows = {
  litmus: {
    bands: [
      { below: 5, colour: "red" },
      { below: 8, colour: "purple" },
      { below: Number.POSITIVE_INFINITY, colour: "blue" },
    ],
    form: "neutral litmus paper",
    source: "transition range of common data booklets, pH 5.0 to 8.0 (handbooks: 4.5 to 8.3), from memory",
  },
  "universal indicator": {
    bands: [
      { below: 3, colour: "red" },
      { below: 5, colour: "orange" },
      { below: 6.5, colour: "yellow" },
      { below: 8, colour: "green" },
      { below: 11, colour: "blue" },
      { below: Number.POSITIVE_INFINITY, colour: "violet" },
    ],
    form: "universal indicator paper",
    source:
      "common colour chart, from memory; makers' charts differ by about half a unit, and all go by the chart on the packet",
  },
} as const satisfies Record<string, IndicatorRow>;

export type Indicator = keyof typeof rows;
export const INDICATORS: Readonly<Record<Indicator, IndicatorRow>> = rows;

/** Within this much of the edge of a band either colour is accepted, units of pH. */
export const NEAR_EDGE = { value: 0.5, source: "our choice: by so much makers' charts differ" } as const;

/**
 * Carbon dioxide that water takes from the air, mol/dm3. A solution that holds its pH by nothing else is no more neutral than that, so the
 * colour with it is accepted too.
 */
export const FROM_AIR = {
  value: 1.4e-5,
  source: "Henry's constant 0.034 mol/(dm3 atm) at 25 C times 4.2e-4 atm in air; it makes pure water pH 5.6 (textbook)",
} as const;

/** Dissolved oxidants that bleach an indicator, and from how much, mol/kg: then the engine gives no colour. */
export const BLEACHES = {
  species: ["Cl2", "HClO", "ClO-", "Br2", "HBrO", "BrO-", "MnO4-"],
  from: 1e-4,
  source: "textbook: chlorine bleaches litmus; the figure is common practice, no source",
} as const;
