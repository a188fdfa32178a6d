/** Asks for what was not said on the command line, one short question after the other. */
import type { Interface } from "node:readline/promises";
import { TESTS, type Typed } from "./options.ts";

/** A question for each entry; an empty answer leaves the default. */
const QUESTIONS: readonly [entry: Exclude<keyof Typed, "course">, question: string, needed: boolean][] = [
  ["title", "What is it called?", true],
  ["samples", 'Samples with their salts, such as "H=ZnCl2, K=CuSO4*5H2O"?', true],
  ["given", "Given as solution, solid or both? [solution]", false],
  ["tests", `Tests, in their order?\n  ${TESTS.join(", ")}\n `, true],
  ["cations", "Cations the paper offers: a list, school, advanced or department? [school]", false],
  ["anions", "Anions the paper offers: a list, school, advanced or department? [school]", false],
];

/** A question that stays unanswered so often is given up: nobody is there. */
const MOST_TRIES = 3;

export async function ask(lines: Pick<Interface, "question">, typed: Typed): Promise<Typed> {
  const answers = { ...typed };
  for (const [entry, question, needed] of QUESTIONS) {
    for (let tries = 0; answers[entry] === undefined && tries < MOST_TRIES; tries++) {
      const answer = (await lines.question(`${question} `)).trim();
      if (answer !== "") answers[entry] = answer;
      else if (!needed) break;
    }
  }
  return answers;
}
