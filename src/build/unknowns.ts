/** What a teacher chooses unknowns from: the predictions of a practical, with the standard tests that could be added to its own. */

import { partNamed } from "#words/choose.ts";
import { inSentence } from "#words/standard-tests.ts";
import type { PredictionTable } from "../engine/bench/prediction-table.ts";
import { tabulate } from "../engine/bench/tabulate.ts";
import { NoEquilibrium } from "../engine/bench/tube.ts";
import { separationsOf } from "../engine/deduction/separations.ts";
import type { FurtherTest } from "../engine/deduction/settling-tests.ts";
import { type StoreHazard, storeHazard } from "../engine/planning/store-hazards.ts";
import type { Part, Practical } from "../engine/practical.ts";
import { phrase } from "../engine/wording/phrase.ts";
import { ownSet } from "./answer.ts";
import { houseParts } from "./department/standard-tests.ts";
import { predictor } from "./predictor.ts";
import { storeFor } from "./school-store.ts";

export interface Unknowns {
  /** The lines of the standard tests stand after the paper's own and are done on no sample. */
  table: PredictionTable;
  /** Tests that could be added: the paper's own parts first, for samples they are not done on, then the standard ones. */
  tests: FurtherTest[];
  /** Salts (indices) of the school store's list that some sample of the paper can be. */
  store: number[];
  /** The walkthrough's own set. */
  own: number[];
  /** By salt (index), for those with something to say. */
  hazards: Record<number, StoreHazard>;
  /** Standard tests that could not be looked at for this paper, each with the reason. */
  leftOut: { test: string; why: string }[];
}

/**
 * A standard test that the engine cannot carry out on every salt of the paper, or that shows more sights than a table holds, is left out
 * and named.
 * @throws RangeError where a sample's answer is no salt the paper allows, and what `tabulate` throws for a procedure the engine cannot carry out
 */
export function unknownsOf(practical: Practical): Unknowns {
  const own = tabulate(practical, predictor, phrase).table;
  // What stands on a border there is looked for only where a first look shows that it could matter: it takes ten times as long.
  const looked = houseParts(practical.samples).map((part) => {
    const first = columnsOf(practical, part, () => false);
    if (typeof first === "string") return { part, found: first };
    const near = couldMislead(own, first);
    return { part, found: columnsOf(practical, part, (salt) => near.has(salt)) };
  });
  const further = looked.flatMap(({ part, found }) => (typeof found === "string" ? [] : [{ part, table: found }]));
  const table = further.reduce((all, one) => joined(all, one.table), own);
  const withCells = ({ label, title }: Part) => ({
    name: inSentence(title),
    cells: cellsOfPart(table, label),
  });
  const possible = new Set(table.sets.flatMap(({ salts }) => salts));
  return {
    table,
    tests: [
      ...practical.parts.map((part) => ({
        ...withCells(part),
        name: partNamed(part.label, part.title),
        own: true as const,
      })),
      ...further.map(({ part }) => withCells(part)),
    ],
    store: storeFor(table),
    own: ownSet(table, practical.samples),
    hazards: Object.fromEntries(
      [...possible].flatMap((salt) => {
        const hazard = storeHazard(table.salts[salt]);
        return hazard ? [[salt, hazard]] : [];
      }),
    ),
    leftOut: looked.flatMap(({ part, found }) => (typeof found === "string" ? [{ test: part.title, why: found }] : [])),
  };
}

const cellsOfPart = ({ cells }: PredictionTable, part: string): number[] =>
  cells.flatMap(({ id }, c) => (id === part || id.startsWith(`${part}(`) ? [c] : []));

/**
 * The columns of a standard test for the salts of the practical, done on no sample; the reason in words where they cannot be made.
 * @param borders whether to look for what stands on a border, of a salt (formula)
 */
function columnsOf(practical: Practical, part: Part, borders: (formula: string) => boolean): PredictionTable | string {
  const { solve, predict, border } = predictor;
  try {
    const { table } = tabulate(
      { ...practical, parts: [part] },
      {
        solve,
        predict,
        border: (salt, form, parts) => border(salt, form, borders(salt.formula) ? parts : []),
      },
      phrase,
    );
    return { ...table, cells: table.cells.map((cell) => ({ ...cell, samples: [] })) };
  } catch (error) {
    if (error instanceof NoEquilibrium || error instanceof RangeError) return error.message;
    throw error;
  }
}

/** Two tables of the same samples and paper side by side. */
function joined(left: PredictionTable, right: PredictionTable): PredictionTable {
  const beside = (a: number[][], b: number[][]) => a.map((row, index) => [...row, ...b[index]]);
  return {
    ...left,
    cells: [...left.cells, ...right.cells],
    facts: [...left.facts, ...right.facts],
    sets: left.sets.map((set, s) => {
      const other = right.sets[s];
      return {
        ...set,
        accepts: beside(set.accepts, other.accepts),
        main: beside(set.main, other.main),
        atBorder: [
          ...set.atBorder,
          ...other.atBorder.map(([row, cell, mask]): [number, number, number] => [row, left.cells.length + cell, mask]),
        ],
        facts: beside(
          set.facts,
          other.facts.map((row) => row.map((fact) => (fact < 0 ? fact : left.facts.length + fact))),
        ),
      };
    }),
  };
}

/** Salts (formulas) that may be taken for another one by the paper's own tests, and that a further test seems to tell from it. */
function couldMislead(own: PredictionTable, further: PredictionTable): Set<string> {
  const apart = separationsOf(own);
  const found = new Set<string>();
  for (const [s, { set }] of own.samples.entries()) {
    const { salts, accepts, main } = further.sets[set];
    for (const [u, salt] of salts.entries()) {
      for (const [v, other] of salts.entries()) {
        if (apart[s][salt][other] > 0) continue;
        const differs = further.cells.some(
          ({ agrees }, c) => main[u][c] >= 0 && accepts[v][c] && !(accepts[v][c] & agrees[main[u][c]]),
        );
        if (differs) found.add(own.salts[other].formula);
      }
    }
  }
  return found;
}
