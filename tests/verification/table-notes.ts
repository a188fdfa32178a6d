/** What the boards' tables say in their notes, clause by clause, against predictions. */
import { borderline } from "../../src/engine/bench/borderline.ts";
import { predictSalt } from "../../src/engine/bench/predict.ts";
import { type SimpleSalt, saltOf } from "../../src/engine/bench/salt.ts";
import { createSolver } from "../../src/engine/equilibrium/solve.ts";
import { cellsOf, type Observation, procedure } from "../../src/engine/practical.ts";
import { phrase } from "../../src/engine/wording/phrase.ts";
import { type Comparison, comparison } from "./comparison.ts";
import { NO_STRENGTH_GIVEN } from "./qualitative.ts";
import { saltBringing } from "./qualitative-rows.ts";
import type { Steps } from "./qualitative-steps.ts";
import { colourAgrees } from "./qualitative-words.ts";
import { reference } from "./reference.ts";

/** What a clause says is seen; what it does not speak of is absent. */
interface Expected {
  none?: true;
  /** A colour, or `false` for none; of a list any will do, and "slight" is little of any colour. */
  precipitate?: string | false | (string | false)[];
  fate?: "dissolves" | "remains";
  /** Where a precipitate that came has gone again, that will do for none. */
  orFate?: "dissolves";
  solution?: string;
  /** Formula of the gas a test finds, or `false` for none. */
  gas?: string | false;
  effervescence?: true;
  fumes?: string;
}

interface Note {
  /** The row's id, with a word for the clause where the row has several. */
  row: string;
  sample: string;
  /** Of a cation's salt, where nitrate would be beside the point. */
  anion?: string;
  molPerDm3?: number;
  note: string;
  tests: Steps;
  expect: Expected;
}

const { rows } = reference<{ rows: Note[] }>("table-notes.json");
const reasons = reference<Record<string, string>>("known-differences-notes.json");

/** Every clause of the notes that says what is seen. */
export function compareNotes(): Comparison {
  const result = comparison(
    "published table, notes",
    "tests/reference/table-notes.json (notes of the same boards and textbooks)",
  );
  const solve = createSolver();
  for (const row of rows) {
    result.compared++;
    const parts = procedure.parse([{ label: "a", title: "test", tests: row.tests.map((steps) => ({ steps })) }]);
    const { salt, simple } = sampleOf(row);
    const predicted = [...predictSalt(salt, parts, solve).values()].at(-1)?.readings ?? [];
    const fits = (seen: Observation) => agrees(row.expect, seen);
    const at = predicted.findIndex(fits);
    // As with the rows themselves, what another strength or constant within its range would show is accepted as the page accepts it.
    const beside =
      at < 0 && simple && row.molPerDm3 === undefined
        ? borderline(simple, NO_STRENGTH_GIVEN, parts, solve)
            .get(cellsOf(parts).at(-1)?.id ?? "")
            ?.readings.some(fits)
        : false;
    if (at >= 0 || beside) result.agreed++;
    if (at > 0 || beside) result.borderline++;
    if (at >= 0 || beside) continue;
    const said = predicted.map((seen) => phrase(seen)).join(", or ") || "nothing";
    result.misses.push({
      id: row.row,
      difference: `${row.sample}: "${row.note}"; predicted ${said}`,
      reason: reasons[row.row],
    });
  }
  return result;
}

function sampleOf({ sample, anion, molPerDm3 }: Note) {
  const simple: SimpleSalt | undefined = anion ? saltOf(sample, anion) : undefined;
  const brought = simple ? { ions: simple.ions, molPerDm3: 0.1 } : saltBringing(sample);
  if (!brought) throw new RangeError(`notes: no sample "${sample}"`);
  const isSolid = sample.endsWith("(s)");
  const ion = sample.endsWith("+") ? saltOf(sample, "NO3-") : isSolid ? undefined : saltOf("Na+", sample);
  return { salt: molPerDm3 === undefined ? brought : { ...brought, molPerDm3 }, simple: simple ?? ion };
}

function agrees(want: Expected, seen: Observation): boolean {
  if (want.none && !seen.none) return false;
  if (want.orFate && seen.fate === want.orFate) return true;
  if (want.precipitate !== undefined && ![want.precipitate].flat().some((one) => isSeen(one, seen))) return false;
  if (want.fate === "dissolves" && seen.fate !== "dissolves") return false;
  if (want.fate === "remains" && (seen.fate === "dissolves" || seen.fate === "partly dissolves")) return false;
  if (want.solution !== undefined && !isColour(want.solution, seen.solution ?? seen.stays)) return false;
  if (want.gas === false && seen.gas) return false;
  if (want.gas && (!seen.gas || seen.gas.formula !== want.gas)) return false;
  if (want.effervescence && !seen.effervescence) return false;
  return want.fumes === undefined || seen.fumes === want.fumes;
}

const isColour = (wanted: string, seen: Observation["solution"]): boolean =>
  seen !== undefined && colourAgrees(wanted, seen);

function isSeen(wanted: string | false, { precipitate }: Observation): boolean {
  if (!precipitate || !wanted) return !precipitate && !wanted;
  return wanted === "slight" ? precipitate.amount === "slight" : colourAgrees(wanted, precipitate.colour);
}
