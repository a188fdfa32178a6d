/** Tables without a test: all that binds the samples is what the paper says. */
import type { PredictionTable } from "../../../src/engine/bench/prediction-table.ts";
import { statement } from "../../../src/engine/practical.ts";

/** Salts of every pair, no predictions, and so many samples that may each hold those that `may` picks. */
export function freeTable(
  ions: { cations: string[]; anions: string[] },
  letters: string,
  said: object,
  may: (s: number, salt: number) => boolean,
): PredictionTable {
  const salts = ions.cations.flatMap((cation) =>
    ions.anions.map((anion) => ({ formula: `${cation} ${anion}`, cations: [cation], anions: [anion] })),
  );
  const sets = [...letters].map((_, s) => ({
    salts: salts.flatMap((_, salt) => (may(s, salt) ? [salt] : [])),
    accepts: [],
    main: [],
    atBorder: [],
    facts: [],
    cannotBe: [],
  }));
  const samples = [...letters].map((label, set) => ({ label, set }));
  return { salts, cells: [], facts: [], sets, samples, paper: statement.parse({ ...ions, ...said }) };
}
