/**
 * The worked calculations on solubility, pH, precipitation, complexes and amphoteric hydroxides (W01 to W56), each built as the mixture it
 * speaks of and given to the engine's solver with the constants the example itself prints, only the species it counts, and activity
 * coefficients of 1: a check of the solver, of the stoichiometry of the rows and of the units, not of our choice of constants.
 */
import { type Comparison, comparison } from "../comparison.ts";
import { COMPLEXES } from "./complexes.ts";
import { holdAgainst, leaveOut, workedExamples } from "./example.ts";
import { PRECIPITATION } from "./precipitation.ts";
import { SOLUBILITY_AND_PH } from "./solubility-and-ph.ts";

const QUESTIONS = { ...SOLUBILITY_AND_PH, ...PRECIPITATION, ...COMPLEXES };

const TOPICS = ["solubility", "pH", "precipitation", "selective precipitation", "complex", "amphoteric"];

/** The examples that ask for an equilibrium. */
export const equilibriumExamples = workedExamples.filter(({ topic }) => TOPICS.includes(topic));

/** Every example that asks for an equilibrium, with its own constants. */
export function compareWorkedEquilibria(): Comparison {
  const result = comparison(
    "worked equilibria, each with its own constants",
    "tests/reference/worked-examples.json, W01 to W56, without activity coefficients, as the examples have it",
  );
  for (const example of equilibriumExamples) {
    const ask = QUESTIONS[example.id];
    if (ask) holdAgainst(result, example, ask());
    else leaveOut(result, "asks for a constant itself: held against the shipped ones below");
  }
  return result;
}
