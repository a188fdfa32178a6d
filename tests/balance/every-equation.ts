/** Every equation of the site, by where it stands or who writes it: constants, the engine's predictions, and the authors' pages. */

import { findEquations } from "../../src/build/equations/find-equations.ts";
import { practicalPaths, readPage } from "../../src/build/practical-files.ts";
import { waysOf } from "../../src/engine/bench/heat/ways.ts";
import { predictSalt } from "../../src/engine/bench/predict.ts";
import { reactions } from "../../src/engine/constants/log-k/index.ts";
import { couples } from "../../src/engine/constants/potentials.ts";
import { createSolver } from "../../src/engine/equilibrium/solve.ts";
import { procedure } from "../../src/engine/practical.ts";
import { ROOT } from "../architecture/source-files.ts";
import { solidsOf } from "../verification/heat-words.ts";
import { publishedRows, trialsOf } from "../verification/qualitative-rows.ts";

const each = (equations: readonly string[]): string[] => [...new Set(equations)].sort();

/** What the engine writes when it is taken through every row of the boards' published tables that it covers. */
function ofPublishedTables(): string[] {
  const solve = createSolver();
  return publishedRows.flatMap((row) => {
    const trials = trialsOf(row);
    if (typeof trials === "string") return [];
    return trials.flatMap(({ salt, steps }) => {
      const parts = procedure.parse([{ label: "a", title: "test", tests: steps.map((one) => ({ steps: one })) }]);
      const predictions = [...predictSalt(salt, parts, solve).values()];
      return predictions.flatMap(({ events }) => events.flatMap(({ equation }) => equation ?? []));
    });
  });
}

/** The ways in which the solids of the published heating rows may fall apart. */
const ofHeatedSolids = (): string[] =>
  publishedRows
    .filter(({ section }) => section === "heat")
    .flatMap(solidsOf)
    .flatMap((formula) => waysOf(formula).map(({ equation }) => equation));

const ofPages = (): string[] =>
  practicalPaths(ROOT, "src/content").flatMap((path) =>
    findEquations(path, readPage(ROOT, path)).equations.map(({ text }) => text),
  );

export const everyEquation: Readonly<Record<string, string[]>> = {
  "log K rows": each(reactions.map(({ reaction }) => reaction)),
  potentials: each(couples.flatMap(({ half, written }) => (written ? [half, written] : [half]))),
  "predictions of the published tables": each(ofPublishedTables()),
  "heated solids": each(ofHeatedSolids()),
  "pages of the course": each(ofPages()),
};
