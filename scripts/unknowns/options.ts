/** What a teacher asks on the command line, or all that is wrong with it. */
import { parseArgs } from "node:util";
import { STANDINGS, type Standing } from "../../src/engine/deduction/hardness.ts";

export interface Asked {
  /** Name of a practical of the course, or the path of an MDX file. */
  practical: string;
  /** Formulas as written; absent: what the school store's list has. */
  store?: string[];
  samples?: number;
  hardness?: Standing;
  /** Sets named of each kind. */
  list: number;
}

export const USAGE = `npm run unknowns -- <practical> [--store "CuSO4, ZnCl2, ..."] [--samples 3] [--hardness hard] [--list 8]

  <practical>   name of a practical of this course, or the path of an MDX file
  --store       salts to choose from; without it the school store's list
  --samples     how many; for another number than the paper's own, its statements fall away
  --hardness    ${STANDINGS.join(", ")}; all four without it
  --list        how many sets of each kind are named, 1 to 100`;

/** Letters of the alphabet and steps of the reasoning set the limit; a class has no more bottles. */
const MOST_SAMPLES = 8;
const MOST_LISTED = 100;
const LISTED = 5;

export function readOptions(args: readonly string[]): { asked: Asked } | { faults: string[] } | "help" {
  const faults: string[] = [];
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    // node:util words these itself, such as "Unknown option '--sample'".
    return {
      faults: [`${(error as Error).message.split(". ")[0]}. Expected only --store, --samples, --hardness, --list.`],
    };
  }
  const { values, positionals } = parsed;
  if (values.help) return "help";
  if (positionals.length !== 1)
    faults.push(
      `Found ${positionals.length === 0 ? "no practical" : `${positionals.length} practicals: ${positionals.join(", ")}`}, expected one. Put a list of salts in quotes.`,
    );
  const samples = wholeNumber("--samples", values.samples, MOST_SAMPLES, faults);
  const list = wholeNumber("--list", values.list, MOST_LISTED, faults);
  const hardness = STANDINGS.find((standing) => standing === values.hardness);
  if (values.hardness !== undefined && !hardness)
    faults.push(`--hardness: found ${values.hardness}, expected one of ${STANDINGS.join(", ")}.`);
  const store = values.store
    ?.split(/[,;]/)
    .map((formula) => formula.trim())
    .filter((formula) => formula !== "");
  if (store?.length === 0) faults.push('--store: found no salt, expected a list such as "CuSO4, ZnCl2".');
  if (faults.length > 0) return { faults };
  return {
    asked: {
      practical: positionals[0],
      ...(store && { store }),
      ...(samples && { samples }),
      ...(hardness && { hardness }),
      list: list ?? LISTED,
    },
  };
}

const parse = (args: readonly string[]) =>
  parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      store: { type: "string" },
      samples: { type: "string" },
      hardness: { type: "string" },
      list: { type: "string" },
      help: { type: "boolean" },
    },
  });

function wholeNumber(flag: string, text: string | undefined, most: number, faults: string[]): number | undefined {
  if (text === undefined) return undefined;
  const number = Number(text);
  if (Number.isInteger(number) && number >= 1 && number <= most) return number;
  faults.push(`${flag}: found ${text || "nothing"}, expected a whole number from 1 to ${most}.`);
  return undefined;
}
