/** What the engine expects of one salt in one procedure: the shapes only. */
import type { Observation } from "../practical.ts";

/** Why something is seen: one chemical event with the numbers behind it. */
export interface BenchEvent {
  kind: "precipitate forms" | "precipitate dissolves" | "gas leaves" | "solution colour" | "redox";
  /** The solid or gas concerned, as a species id ("BaSO4(s)", "NH3(g)"). */
  phase?: string;
  /** Most solid present during the test, g/dm3 of mixture. */
  gramsPerDm3?: number;
  /** Fraction of the precipitate that has dissolved at the end, 0 to 1. */
  dissolved?: number;
  /** Main species it dissolves as. */
  dissolvedAs?: string;
  /** Partial pressure of the gas above the liquid, atm. */
  atm?: number;
  /** Net ionic equation, balanced in atoms and charge, mhchem with state symbols. */
  equation?: string;
  /** Key of the kinetic gate that let this happen or kept something else from happening. */
  gate?: string;
}

/** What would be recorded for one test. */
export interface Prediction {
  /** Acceptable observations, the likeliest first; more than one when the sight is borderline. */
  readings: Observation[];
  events: BenchEvent[];
  /** Gates that kept something from being seen here. */
  gates: string[];
}
