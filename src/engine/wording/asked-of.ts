/** What a test does, so that short words are read as answers to it and a record can be asked for what it leaves out. */
import type { Indicator } from "../constants/indicators.ts";
import type { GasTest, Step } from "../practical.ts";

/** All may be absent: then nothing is known of the test, and nothing is asked. */
export interface AskedOf {
  /** A reagent is added in excess. */
  excess?: boolean;
  /** A solid is in the tube when the test begins. */
  solid?: boolean;
  /** A gas is tested for. `false`: none is, so what could be the sign of one is of the liquid. */
  gas?: boolean;
  /** How the gas is tested for: "turns blue" then says enough. */
  gasTest?: GasTest;
  /** A flame is looked at: a bare colour is its colour. */
  flame?: boolean;
  /** The liquid is tried with an indicator. */
  indicator?: Indicator;
  /** A dry solid is heated: a bare colour is that of its residue. */
  heated?: boolean;
}

/** @param solid a solid is in the tube when the test begins: a precipitate of the test before, or the sample itself */
export function askedOf(steps: readonly Step[], solid = false): AskedOf {
  const tested = steps.find((step) => step.do === "test gas");
  const led = steps.some((step) => step.do === "lead through");
  const tried = steps.find((step) => step.do === "indicator");
  const gasTest = led ? "limewater" : tested?.with;
  return {
    excess: steps.some((step) => step.do === "add" && "inExcess" in step.amount),
    solid,
    gas: gasTest !== undefined,
    ...(gasTest && { gasTest }),
    flame: steps.some((step) => step.do === "flame"),
    ...(tried && { indicator: tried.with }),
    heated: steps.some((step) => step.do === "heat solid"),
  };
}
