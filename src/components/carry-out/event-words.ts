/** One chemical event of a prediction as a sentence, with its numbers. */
import * as say from "#words/events.ts";
import type { BenchEvent } from "../../engine/bench/prediction.ts";

const figures = (value: number) => String(Number(value.toPrecision(2)));

/** State at the end of a species, with its form if it has one. */
const STATE = /\((?:s|g|l|aq)(?:, ?([^)]*))?\)$/;

/** "Al(OH)3" of "Al(OH)3(s, fresh)". */
const withoutState = (species: string) => species.replace(STATE, "");

/** "Al(OH)3 (gibbsite)" of "Al(OH)3(s, gibbsite)": the form tells two solids of one formula apart. */
export const withForm = (species: string) =>
  withoutState(species) + (STATE.exec(species)?.[1] ? ` (${STATE.exec(species)?.[1]})` : "");

const percent = (part: number): string => (part > 0.995 ? say.ALL_BUT_A_TRACE : `${Math.round(part * 100)} %`);

/** "BaSO4 forms, 7.8 g/dm3 of mixture." Formulas in mhchem notation. */
export function wordEvent({ kind, phase, where, gramsPerDm3, dissolved, cm3, atm, celsius, pH }: BenchEvent): string {
  const what = phase ? withoutState(phase) : "";
  switch (kind) {
    case "precipitate forms":
      return say.forms(what, where, gramsPerDm3 === undefined ? undefined : figures(gramsPerDm3));
    case "precipitate dissolves":
      return say.dissolves(what, where, dissolved === undefined ? undefined : percent(dissolved));
    case "precipitate passes":
      return say.passes(what);
    case "gas leaves":
      return say.comesOff(what, [
        // Ammonia leaves a hot liquid with the steam: nobody sees bubbles of it.
        ...(cm3 === undefined ? [] : [say.asBubbles(figures(cm3), what !== "NH3")]),
        ...(atm === undefined ? [] : [say.ofTheAir(figures(atm * 100))]),
      ]);
    case "heat":
      return say.heatChanges(celsius === undefined ? undefined : Math.round(celsius / 10) * 10);
    case "indicator":
      return pH === undefined ? say.HOW_ACIDIC : say.hasPH(pH.toFixed(1));
    case "redox":
      return say.REDOX;
  }
}

/** Where a fact of the constants comes from, as a sentence: "Source: Vogel, from memory." */
export const wordSource = (source: string): string =>
  source === "common practice, no source" ? say.COMMON_PRACTICE : say.source(source);
