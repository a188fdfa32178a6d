/** The boards' published qualitative tables against predictions. */
import { predictSalt } from "../../src/engine/bench/predict.ts";
import { saltOf } from "../../src/engine/bench/salt.ts";
import { COLOURS } from "../../src/engine/constants/colours.ts";
import { ANIONS, CATIONS } from "../../src/engine/constants/ions.ts";
import { createSolver, type Solver } from "../../src/engine/equilibrium/solve.ts";
import { type Colour, type Observation, procedure, sameColour } from "../../src/engine/practical.ts";
import { phrase } from "../../src/engine/wording/phrase.ts";
import { type Comparison, comparison } from "./comparison.ts";
import {
  alkaliSteps,
  colourSynonyms,
  mhchem,
  OTHER_STEPS,
  type PublishedObservation,
  type PublishedRow,
  publishedRows,
} from "./qualitative-rows.ts";
import { reasonFor } from "./reference.ts";

/** Strength of the sample, mol/dm3: the usual one of bench solutions (RSC: 0.1 to 0.5). */
const SAMPLE = 0.1;
const SOURCE = "tests/reference/qualitative-tables.json (boards' published notes and textbooks)";

const standard = createSolver();

/** Compares one section of the table, with the constants as they are or with a solver of others. */
export function compareSection(section: string, solve: Solver = standard): Comparison {
  const result = comparison(`published table, ${section}`, SOURCE);
  const leave = (cause: string) => {
    result.left[cause] = (result.left[cause] ?? 0) + 1;
  };
  for (const row of publishedRows.filter((each) => each.section === section)) {
    const ions = ionsOfRow(row);
    if (ions.length === 0) {
      leave("ion not covered");
      continue;
    }
    const steps = section === "cation-alkali" ? alkaliSteps(row.reagent, row.stage) : OTHER_STEPS[row.reagent];
    if (!steps) {
      leave("reagent or operation not covered");
      continue;
    }
    const parts = procedure.parse([{ label: "a", title: "test", tests: steps.map((each) => ({ steps: each })) }]);
    const ids = steps.length === 1 ? ["a"] : ["a(i)", "a(ii)", "a(iii)"].slice(0, steps.length);
    for (const { ion, expected } of ions) {
      result.compared++;
      const id = ions.length > 1 ? `${row.id} ${ion}` : row.id;
      const shown = predictSalt({ ions: sampleOf(ion), molPerDm3: SAMPLE, solid: "x" }, parts, solve);
      const history = ids.map((each) => shown.get(each)?.readings ?? []);
      const wanted = [expected, ...(row.alsoAccept ?? []).map((other) => ({ ...expected, ...other }))];
      const at = agreement(wanted, history);
      if (at >= 0) result.agreed++;
      if (at > 0) result.borderline++;
      if (at < 0) {
        result.misses.push({
          id,
          difference: `${ion} with ${row.reagent}, ${row.stage}: published ${wordPublished(expected)}; predicted ${history
            .at(-1)
            ?.map((seen) => phrase(seen))
            .join(", or ")}`,
          reason: reasonFor(id),
        });
      }
    }
  }
  return result;
}

const known: readonly string[] = [...CATIONS, ...ANIONS];

/** The ions of a row with what each should show; rows for several ions say in words which of them dissolves. */
function ionsOfRow(row: PublishedRow): { ion: string; expected: PublishedObservation }[] {
  const names = row.ion.split("/").map((name) => mhchem(name));
  return names.flatMap((ion) => {
    if (!known.includes(ion)) return [];
    const { solubleInExcess } = row.observation;
    if (typeof solubleInExcess !== "string" || names.length === 1) return [{ ion, expected: row.observation }];
    const dissolves = solubleInExcess.includes(ion.replace("^", ""));
    const resultingColour = dissolves ? (row.observation.resultingColour?.replace(/ for .*$/, "") ?? null) : null;
    return [{ ion, expected: { ...row.observation, solubleInExcess: dissolves, resultingColour } }];
  });
}

/** The salt that brings the ion: nitrates for cations, sodium salts for anions. */
const sampleOf = (ion: string): Record<string, number> =>
  ion.endsWith("+") ? saltOf(ion, "NO3-").ions : saltOf("Na+", ion).ions;

/** Index of the first reading of the last test that agrees with one of the accepted observations; -1 for none. */
function agreement(wanted: readonly PublishedObservation[], history: readonly (readonly Observation[])[]): number {
  const last = history[history.length - 1];
  const earlier = history.slice(0, -1);
  return last.findIndex((seen) => wanted.some((one) => agrees(one, seen, earlier)));
}

function agrees(
  wanted: PublishedObservation,
  seen: Observation,
  earlier: readonly (readonly Observation[])[],
): boolean {
  if (wanted.gas !== null && !(seen.gas && seen.gas.formula === wanted.gas)) return false;
  if (seen.flame !== undefined) return flameAgrees(wanted.resultingColour, seen.flame);
  const formed = [...earlier.flat(), seen].map(({ precipitate }) => precipitate).find((one) => one);
  if (wanted.precipitate === false && formed) return false;
  if (wanted.precipitate === true && (!formed || !colourAgrees(wanted.colour, formed.colour))) return false;
  if (
    wanted.precipitate === "slight" &&
    !(formed && formed.amount === "slight" && colourAgrees(wanted.colour, formed.colour))
  )
    return false;
  if (wanted.solubleInExcess === true && seen.fate !== "dissolves") return false;
  if (wanted.solubleInExcess === false && (seen.fate === "dissolves" || seen.fate === "partly dissolves")) return false;
  if (wanted.solubleInExcess === "partially" && seen.fate !== "partly dissolves") return false;
  const asksColour =
    wanted.resultingColour !== null && wanted.solubleInExcess !== false && wanted.precipitate !== false;
  if (asksColour && !(seen.solution && colourAgrees(wanted.resultingColour, seen.solution))) return false;
  return true;
}

function flameAgrees(wanted: string | null, seen: Colour | false): boolean {
  return seen === false ? wanted === null || wanted.startsWith("no ") : wanted !== null && colourAgrees(wanted, seen);
}

/** True when the published word and ours are the same, or the table or our colour list calls them the same. */
function colourAgrees(wanted: string | null, seen: Colour): boolean {
  if (wanted === null) return true;
  if (wanted === seen) return true;
  const listed = (word: string) => [word, ...(colourSynonyms[word] ?? [])];
  if (listed(wanted).includes(seen) || listed(seen).includes(wanted)) return true;
  return Object.hasOwn(COLOURS, wanted) && sameColour(wanted as Colour, seen);
}

function wordPublished({ precipitate, colour, solubleInExcess, resultingColour, gas }: PublishedObservation): string {
  const words = [
    precipitate === false
      ? "no precipitate"
      : precipitate === null
        ? ""
        : `${precipitate === "slight" ? "slight " : ""}${colour} precipitate`,
  ];
  if (solubleInExcess !== null) words.push(`soluble: ${solubleInExcess}`);
  if (resultingColour !== null) words.push(resultingColour);
  if (gas !== null) words.push(gas);
  return words.filter(Boolean).join(", ");
}
