/** Ions and salts named on a paper: mhchem text, checked against what the engine knows. */
import * as z from "zod/mini";
import { ANIONS, CATIONS } from "../constants/ions.ts";
import { FormulaError, parseFormula } from "../formula/parse.ts";
import { describe } from "./quantity.ts";

const known = (kind: string, list: readonly string[]) =>
  z.enum(list as [string, ...string[]], {
    error: ({ input }) =>
      input === ""
        ? `found no ion yet, expected one to be chosen, such as ${list[0]}`
        : `found ${describe(input)}, expected ${kind} the engine knows: ${list.join(", ")}`,
  });

/** A cation the engine can predict, such as "Cu^2+". */
export const cation = known("a cation", CATIONS);
/** An anion the engine can predict, such as "SO4^2-". */
export const anion = known("an anion", ANIONS);
/** Either. */
export const ion = known("an ion", [...CATIONS, ...ANIONS]);

/** A salt in mhchem notation, such as "CuSO4*5H2O", or the salts of a mixture joined by " + ". */
export const formula = z
  .string({ error: (issue) => `found ${describe(issue.input)}, expected a formula such as "CuSO4*5H2O"` })
  .check(z.refine((text) => faultOf(text) === undefined, { error: (issue) => faultOf(String(issue.input)) }));

/** What is wrong with the first of the formulas that cannot be read. */
function faultOf(text: string): string | undefined {
  try {
    for (const one of text.split(" + ")) parseFormula(one);
  } catch (error) {
    if (error instanceof FormulaError) return error.message;
    throw error;
  }
  return undefined;
}
