/** What the department that hosts the page has of its own, offered to whoever enters a paper. */
import type { WrittenStep } from "../../engine/constants/standard-tests.ts";

export interface House {
  /** Strength of each bottle that is not of the usual one, by reagent, as a paper writes it. */
  strengths: Readonly<Record<string, string>>;
  /** The department's list of ions. */
  ions?: Readonly<Record<"cations" | "anions", readonly string[]>>;
}

/** The step with the strength of the department's bottle written into it, where it adds one and names no strength itself. */
export function atHouse(step: WrittenStep, { strengths }: House): WrittenStep {
  const id = String(step.add);
  return "add" in step && !("at" in step) && Object.hasOwn(strengths, id) ? { ...step, at: strengths[id] } : step;
}

/** The step with another reagent: what was said of the strength was said of the bottle before. */
export function withReagent(step: WrittenStep, reagent: string, house: House): WrittenStep {
  const { at: _, ...rest } = step;
  return atHouse({ ...rest, add: reagent }, house);
}
