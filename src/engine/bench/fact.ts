/** The one number that best explains a prediction, as a short phrase for a page: "7.8 g/dm3 of BaSO4". */
import { VISIBILITY } from "../constants/visibility.ts";
import type { BenchEvent, Prediction } from "./prediction.ts";

/** Chooses among the events of a test; undefined when nothing happened worth a number. */
export function factOf(prediction: Prediction | undefined): string | undefined {
  const events = prediction?.events ?? [];
  const dissolving = events.find((event) => event.kind === "precipitate dissolves" && (event.dissolved ?? 0) >= 0.25);
  const forming = events.find(
    (event) => event.kind === "precipitate forms" && (event.gramsPerDm3 ?? 0) >= VISIBILITY.visible.value,
  );
  const gas = events.find((event) => event.kind === "gas leaves");
  const event = dissolving ?? forming ?? gas ?? events.find(({ kind }) => kind === "indicator");
  return event && factOfEvent(event);
}

/** One event as a short phrase. */
export function factOfEvent(event: BenchEvent): string | undefined {
  const what = event.phase ? plain(event.phase) : "";
  const where = event.where ? ` in the ${event.where}` : "";
  if (event.pH !== undefined) return `pH ${event.pH.toFixed(1)}`;
  if (event.dissolved !== undefined) return `${Math.round(event.dissolved * 100)} % of the ${what} dissolves${where}`;
  if (event.gramsPerDm3 !== undefined) return `${twoFigures(event.gramsPerDm3)} g/dm3 of ${what}${where}`;
  if (event.cm3 !== undefined) return `${twoFigures(event.cm3)} cm3 of ${what}`;
  if (event.atm !== undefined) return `${what} at ${twoFigures(event.atm * 1e6)} ppm above the liquid`;
  return undefined;
}

/** The phase without its state. */
const plain = (phase: string): string => phase.replace(/\((s|g)(, [^)]*)?\)$/, "");

function twoFigures(amount: number): string {
  if (amount >= 100) return String(Number(amount.toPrecision(2)));
  return amount.toPrecision(2);
}
