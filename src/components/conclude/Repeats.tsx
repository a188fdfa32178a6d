import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import type { Conclusion, Repeat, RepeatedPlace } from "../../engine/deduction/conclusion.ts";
import { list } from "../sentence.ts";
import { Words } from "../Words.tsx";

/** So many suggestions stand open, the rest folded: more would hide the first. */
const SHOWN = 3;
const NAMED = 4;

/** "look for precipitate dissolves", with the test named where there are several. */
function lookFor(table: PredictionTable, places: RepeatedPlace[]): string {
  const at = ({ cell, sample, lookFor: readings }: RepeatedPlace) => {
    const words = table.cells.find(({ id }) => id === cell)?.words ?? [];
    const where = places.length > 1 ? ` at ${cell} for ${sample}` : "";
    return `${list(
      readings.map((reading) => words[reading]),
      "or",
    )}${where}`;
  };
  return `look for ${places.map(at).join("; ")}`;
}

/** "R may be ZnSO4, S may be one of 7 salts" */
const then = (table: PredictionTable, leadsTo: Repeat["leadsTo"]): string =>
  Object.entries(leadsTo)
    .map(([sample, salts]) =>
      salts.length > NAMED
        ? `${sample} may be one of ${salts.length} salts`
        : `${sample} may be ${list(
            salts.map((salt) => table.salts[salt].formula),
            "or",
          )}`,
    )
    .join(", ");

/** What to repeat first when the record fits nothing: the smallest sets of observations that would bring it into agreement. */
export function Repeats({ table, conclusion }: { table: PredictionTable; conclusion: Conclusion }) {
  const { repeats, moreRepeats } = conclusion;
  if (conclusion.assignments > 0) return null;
  if (conclusion.contradiction !== undefined) {
    return (
      <p>
        <b class="clash">The paper contradicts itself:</b> <Words of={conclusion.contradiction} />. No observation can
        mend that.
      </p>
    );
  }
  if (repeats.length === 0) {
    return (
      <p>
        <b class="clash">Start again.</b> No small set of observations explains it: check the labels on the tubes and
        repeat the tests in order.
      </p>
    );
  }
  const line = ({ places, leadsTo }: Repeat) => (
    <li key={places.map((place) => place.sample + place.cell).join()}>
      <b>{list(places.map((place) => `${place.cell} for ${place.sample}`))}</b>: <Words of={lookFor(table, places)} />.
      Then <Words of={then(table, leadsTo)} />.
    </li>
  );
  return (
    <>
      <p>
        <b class="clash">Repeat first.</b> All the rest agrees once this is set aside
        {repeats.length > 1 && ", what is most easily misread first"}:
      </p>
      <ul>{repeats.slice(0, SHOWN).map(line)}</ul>
      {repeats.length > SHOWN && (
        <details>
          <summary>
            {repeats.length - SHOWN} other {repeats.length - SHOWN === 1 ? "set" : "sets"} of as few observations
          </summary>
          <ul>{repeats.slice(SHOWN).map(line)}</ul>
          {moreRepeats && <p>And more: with so many, repeat the tests from the start.</p>}
        </details>
      )}
    </>
  );
}
