/** Ions and salts named on a paper: mhchem text, checked against what the engine knows. */
import { z } from "zod";
import { ANIONS, CATIONS } from "../constants/ions.ts";
import { FormulaError, parseFormula } from "../formula/parse.ts";
import { describe } from "./quantity.ts";

const known = (kind: string, list: readonly string[]) =>
  z.enum(list as [string, ...string[]], {
    error: (issue) => `found ${describe(issue.input)}, expected ${kind} the engine knows: ${list.join(", ")}`,
  });

/** A cation the engine can predict, such as "Cu^2+". */
export const cation = known("a cation", CATIONS);
/** An anion the engine can predict, such as "SO4^2-". */
export const anion = known("an anion", ANIONS);

/** A formula in mhchem notation, such as "CuSO4*5H2O". */
export const formula = z
  .string({ error: (issue) => `found ${describe(issue.input)}, expected a formula such as "CuSO4*5H2O"` })
  .refine(
    (text) => {
      try {
        parseFormula(text);
        return true;
      } catch (error) {
        if (error instanceof FormulaError) return false;
        throw error;
      }
    },
    { error: (issue) => faultOf(String(issue.input)) },
  );

function faultOf(text: string): string {
  try {
    parseFormula(text);
  } catch (error) {
    if (error instanceof FormulaError) return error.message;
    throw error;
  }
  return "";
}
