/** The one number that best explains a prediction, as a short phrase for a page: "7.8 g/dm3 of BaSO4". */
import * as say from "#words/fact.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import type { BenchEvent, Prediction } from "./prediction.ts";

/** Chooses among the events of a test; undefined when nothing happened worth a number. */
export function factOf(prediction: Prediction | undefined): string | undefined {
  const events = prediction?.events ?? [];
  const dissolving = events.find(
    (event) => event.kind === "precipitate dissolves" && (event.dissolved ?? 0) >= VISIBILITY.dissolvesBelow.value,
  );
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
  if (event.pH !== undefined) return `pH ${event.pH.toFixed(1)}`;
  if (event.dissolved !== undefined) return say.dissolves(Math.round(event.dissolved * 100), what, event.where);
  if (event.gramsPerDm3 !== undefined) return say.perDm3(twoFigures(event.gramsPerDm3), what, event.where);
  if (event.cm3 !== undefined) return say.ofGas(twoFigures(event.cm3), what);
  if (event.atm !== undefined) return say.above(what, twoFigures(event.atm * 1e6));
  return undefined;
}

/** The phase without its state. */
const plain = (phase: string): string => phase.replace(/\((s|g)(, [^)]*)?\)$/, "");

function twoFigures(amount: number): string {
  if (amount >= 100) return String(Number(amount.toPrecision(2)));
  return amount.toPrecision(2);
}
