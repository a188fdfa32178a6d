/** Asks for what the test shows and the words leave out. */
import { ask, type Reading } from "./reading.ts";

export function complete(reading: Reading): void {
  const { seen, asked } = reading;
  if (Object.keys(seen).length === 0) return;
  if (asked.gas && seen.gas === undefined && !reading.missing.includes("gas test")) {
    const question = seen.effervescence
      ? "Which gas was it: what did its test show?"
      : "What did the test of the gas show?";
    ask(reading, question, "gas");
  }
  if (seen.none) return;
  const solid = seen.precipitate || asked.solid;
  if (asked.excess && solid && seen.fate === undefined)
    ask(reading, "What happened in excess: did it dissolve, did some of it dissolve, or did it remain?", "fate");
  if (seen.fate === "dissolves" && seen.solution === undefined && !reading.missing.includes("solution"))
    ask(reading, "What colour is the solution now?", "solution");
}
