/** Observations to repeat, in half sentences; formulas in mhchem notation. */
import * as say from "#words/repeats.ts";
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import type { Repeat, RepeatedPlace } from "../../engine/deduction/conclusion.ts";
import { SOMETHING_ELSE } from "../../engine/deduction/something-else.ts";

/** Salts named before they are only counted. */
const NAMED = 4;

/** "a(i) for R". */
export const placeName = ({ cell, sample }: RepeatedPlace): string => say.placeOf(cell, sample);

const isElse =
  (record: TableRecord) =>
  ({ sample, cell }: RepeatedPlace): boolean =>
    record[sample][cell] === SOMETHING_ELSE;

/** The places to repeat at which something else was seen than any salt is predicted to show, each once, as `placeName` names it. */
export const unlisted = (repeats: readonly Repeat[], record: TableRecord): string[] => [
  ...new Set(repeats.flatMap(({ places }) => places.filter(isElse(record)).map(placeName))),
];

/** Such places first: nothing agrees before they are repeated. */
export const unlistedFirst = (places: readonly RepeatedPlace[], record: TableRecord): RepeatedPlace[] =>
  places.toSorted((a, b) => Number(isElse(record)(b)) - Number(isElse(record)(a)));

/** "look for precipitate dissolves", with the test named where there are several. */
export function lookFor(table: PredictionTable, places: readonly RepeatedPlace[]): string {
  return say.lookFor(
    places.map((place) => {
      const words = table.cells.find(({ id }) => id === place.cell)?.words ?? [];
      return { sights: place.lookFor.map((reading) => words[reading]), place: placeName(place) };
    }),
  );
}

/** "R may be ZnSO4, S may be one of 7 salts". */
export const thenLeft = (table: PredictionTable, leadsTo: Repeat["leadsTo"]): string =>
  Object.entries(leadsTo)
    .map(([sample, salts]) => {
      const formulas = salts.map((salt) => table.salts[salt].formula);
      return salts.length > NAMED ? say.mayBeOneOf(sample, salts.length) : say.mayBe(sample, formulas);
    })
    .join(", ");
