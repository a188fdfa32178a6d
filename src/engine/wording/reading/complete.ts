/** Asks for what the test shows and the words leave out. */
import * as say from "#words/reading.ts";
import { ask, type Reading } from "./reading.ts";

export function complete(reading: Reading): void {
  const { seen, asked } = reading;
  if (Object.keys(seen).length === 0) return;
  if (asked.gas && seen.gas === undefined && !reading.missing.includes("gas test")) {
    const question = seen.effervescence ? say.WHICH_GAS : say.WHAT_DID_THE_GAS_SHOW;
    ask(reading, question, "gas");
  }
  if (seen.none) return;
  const solid = seen.precipitate || asked.solid;
  if (asked.excess && solid && seen.fate === undefined) ask(reading, say.IN_EXCESS, "fate");
  if (seen.fate === "dissolves" && seen.solution === undefined && !reading.missing.includes("solution"))
    ask(reading, say.SOLUTION_NOW, "solution");
}
