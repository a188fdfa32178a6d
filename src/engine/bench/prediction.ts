/** What the engine expects of one salt in one procedure: the shapes only. */
import type { Colour, GivenOff, Observation } from "../practical.ts";

/** Why something is seen: one chemical event with the numbers behind it. */
export interface BenchEvent {
  kind:
    | "precipitate forms"
    | "precipitate dissolves"
    /** It falls where a drop lands and is gone when shaken. */
    | "precipitate passes"
    | "gas leaves"
    | "redox"
    | "heat"
    | "indicator";
  /** Not in the tube itself, but in the limewater its gas is led through. */
  where?: "limewater";
  /** The solid or gas concerned, as a species id ("BaSO4(s)", "NH3(g)"). */
  phase?: string;
  /** Most solid present during the test, g/dm3 of mixture. */
  gramsPerDm3?: number;
  /** Fraction of the precipitate that has dissolved at the end, 0 to 1. */
  dissolved?: number;
  /** Partial pressure of the gas above the liquid when it was tested, atm. */
  atm?: number;
  /** Gas that left as bubbles, cm3 at room temperature. */
  cm3?: number;
  /** Of the liquid an indicator was touched with. */
  pH?: number;
  /** Temperature from which a heated solid changes, C. */
  celsius?: number;
  /** Net ionic equation, balanced in atoms and charge, mhchem with state symbols. */
  equation?: string;
  /** Why it happens within minutes. */
  source?: string;
  /** Key of the kinetic gate that let this happen or kept something else from happening. */
  gate?: string;
}

/** What would be recorded for one test. */
export interface Prediction {
  /** Acceptable observations, the likeliest first; more than one when the sight is borderline. */
  readings: Observation[];
  events: BenchEvent[];
  /** Colour of the liquid at the end, changed or not; absent where there is none. */
  solution?: Colour;
  /** Colours that could be read into the liquid: its own at any look, and those of solids in it. */
  colours: Colour[];
  /** Gases that come off in an amount that can be shown or felt, or can harm, tested for or not. */
  gases: GivenOff[];
  /** Kinetic gates that acted (see constants/kinetic-gates.ts). */
  gates: string[];
  /** Solids that equilibrium alone would make of this mixture but that do not form within minutes, with the reason in their row. */
  heldBack: string[];
}
