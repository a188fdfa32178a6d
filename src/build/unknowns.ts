/** What a teacher chooses unknowns from: the predictions of a practical, with the standard tests that could be added to its own. */

import { solidForm } from "../engine/bench/allowed-salts.ts";
import { contentOf } from "../engine/bench/contents.ts";
import type { PredictionTable } from "../engine/bench/prediction-table.ts";
import { tabulate } from "../engine/bench/tabulate.ts";
import { salts as schoolStore } from "../engine/constants/salts.ts";
import { separationsOf } from "../engine/deduction/separations.ts";
import type { FurtherTest } from "../engine/deduction/settling-tests.ts";
import { type StoreHazard, storeHazard } from "../engine/planning/store-hazards.ts";
import { standardParts } from "../engine/practical/standard-parts.ts";
import type { Part, Practical } from "../engine/practical.ts";
import { phrase } from "../engine/wording/phrase.ts";
import { answerOf } from "./answer.ts";
import { predictor } from "./predictor.ts";

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
}

/** @throws what `tabulate` throws for a procedure the engine cannot carry out */
export function unknownsOf(practical: Practical): Unknowns {
  const added = standardParts(practical.samples);
  // What stands on a border there is looked for only where a first look shows that it could matter: it takes ten times as long.
  const first = withFurther(practical, added, () => false);
  const near = couldMislead(first, added);
  const table = withFurther(practical, added, (formula, part) => near.has(`${formula} ${part}`));
  const withCells = ({ label, title }: Part) => ({
    name: title.charAt(0).toLowerCase() + title.slice(1),
    cells: cellsOfPart(table, label),
  });
  const possible = new Set(table.sets.flatMap(({ salts }) => salts));
  return {
    table,
    tests: [
      ...practical.parts.map((part) => ({
        ...withCells(part),
        name: `part ${part.label} (${part.title})`,
        own: true as const,
      })),
      ...added.map(withCells),
    ],
    store: [...possible].filter((salt) => isKept(table.salts[salt])).sort((a, b) => a - b),
    own: practical.samples.map((sample) => {
      const answer = answerOf(table, sample);
      return answer ? table.salts.indexOf(answer) : -1;
    }),
    hazards: Object.fromEntries(
      [...possible].flatMap((salt) => {
        const hazard = storeHazard(table.salts[salt]);
        return hazard ? [[salt, hazard]] : [];
      }),
    ),
  };
}

/** The school store's list has a bottle of it. */
function isKept({ cations, anions }: PredictionTable["salts"][number]): boolean {
  const formula = solidForm(contentOf(cations, anions));
  return schoolStore.some((row) => row.formula === formula);
}

const cellsOfPart = ({ cells }: PredictionTable, part: string): number[] =>
  cells.flatMap(({ id }, c) => (id === part || id.startsWith(`${part}(`) ? [c] : []));

/**
 * The practical's table with further parts that are done on no sample.
 * @param borders whether to look for what stands on a border, of a salt in a further part
 */
function withFurther(
  practical: Practical,
  added: readonly Part[],
  borders: (formula: string, part: string) => boolean,
): PredictionTable {
  const { solve, predict, border } = predictor;
  const { table } = tabulate(
    { ...practical, parts: [...practical.parts, ...added] },
    {
      solve,
      predict,
      border: (salt, form, parts) =>
        border(
          salt,
          form,
          parts.filter((part) => !added.includes(part) || borders(salt.formula, part.label)),
        ),
    },
    phrase,
  );
  const further = new Set(added.flatMap(({ label }) => cellsOfPart(table, label)));
  return { ...table, cells: table.cells.map((cell, c) => (further.has(c) ? { ...cell, samples: [] } : cell)) };
}

/** "formula part", for each salt that another one may be taken for and that this further part seems to tell from it. */
function couldMislead(table: PredictionTable, added: readonly Part[]): Set<string> {
  const apart = separationsOf(table);
  const found = new Set<string>();
  const parts = added.map(({ label }) => ({ label, cells: cellsOfPart(table, label) }));
  for (const [s, { set }] of table.samples.entries()) {
    const { salts, accepts, main } = table.sets[set];
    for (const [u, salt] of salts.entries()) {
      for (const [v, other] of salts.entries()) {
        if (u === v || apart[s][salt][other] > 0) continue;
        for (const { label, cells } of parts) {
          const differs = cells.some(
            (c) => main[u][c] >= 0 && accepts[v][c] && !(accepts[v][c] & table.cells[c].agrees[main[u][c]]),
          );
          if (differs) found.add(`${table.salts[other].formula} ${label}`);
        }
      }
    }
  }
  return found;
}
