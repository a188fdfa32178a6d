/** What is read from an instruction, flat, for the tests that follow. */
import { readInstruction } from "../../../src/engine/wording/read-instruction.ts";

export const testsOf = (text: string) => readInstruction(text).parts.flatMap(({ tests }) => tests);
export const stepsOf = (text: string) => testsOf(text).map(({ steps }) => steps);
export const questionsOf = (text: string) =>
  testsOf(text).flatMap(({ stretches }) => stretches.flatMap(({ questions }) => questions));

/** The step that adds sodium hydroxide. */
export const NAOH = (amount: object) => ({ add: "NaOH(aq)", ...amount });
