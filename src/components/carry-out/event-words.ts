/** One chemical event of a prediction as a sentence, with its numbers. */
import type { BenchEvent } from "../../engine/bench/prediction.ts";
import { capital } from "../capital.ts";

const figures = (value: number) => String(Number(value.toPrecision(2)));

/** State at the end of a species, with its form if it has one. */
const STATE = /\((?:s|g|l|aq)(?:, ?([^)]*))?\)$/;

/** "Al(OH)3" of "Al(OH)3(s, fresh)". */
const withoutState = (species: string) => species.replace(STATE, "");

/** "Al(OH)3 (gibbsite)" of "Al(OH)3(s, gibbsite)": the form tells two solids of one formula apart. */
export const withForm = (species: string) =>
  withoutState(species) + (STATE.exec(species)?.[1] ? ` (${STATE.exec(species)?.[1]})` : "");

function percent(part: number): string {
  return part > 0.995 ? "all but a trace" : `${Math.round(part * 100)} %`;
}

/** "BaSO4 forms, 7.8 g/dm3 of mixture." Formulas in mhchem notation. */
export function wordEvent(event: BenchEvent): string {
  const what = event.phase ? withoutState(event.phase) : "";
  const where = event.where ? `In the ${event.where}, ` : "";
  switch (event.kind) {
    case "precipitate forms":
      return `${where}${what} forms${event.gramsPerDm3 === undefined ? "" : `, ${figures(event.gramsPerDm3)} g/dm3 of mixture`}.`;
    case "precipitate dissolves":
      return event.dissolved === undefined
        ? `${where}${what} dissolves.`
        : `${where}${where ? percent(event.dissolved) : capital(percent(event.dissolved))} of the ${what} dissolves.`;
    case "gas leaves": {
      const amounts = [
        // Ammonia leaves a hot liquid with the steam: nobody sees bubbles of it.
        ...(event.cm3 === undefined ? [] : [`${figures(event.cm3)} cm3${what === "NH3" ? "" : " as bubbles"}`]),
        ...(event.atm === undefined ? [] : [`${figures(event.atm * 100)} % of the air above the liquid`]),
      ];
      return `${what} comes off${amounts.length > 0 ? `: ${amounts.join(", ")}` : ""}.`;
    }
    case "heat":
      return `The heat changes it${event.celsius === undefined ? "" : `, from about ${Math.round(event.celsius / 10) * 10} °C`}.`;
    case "indicator":
      return event.pH === undefined
        ? "The indicator shows how acidic it is."
        : `The liquid has pH ${event.pH.toFixed(1)}.`;
    case "redox":
      return "An oxidation and a reduction.";
  }
}

/** Where a fact of the constants comes from, as a sentence: "Source: Vogel, from memory." */
export const wordSource = (source: string): string =>
  source === "common practice, no source" ? "This is common practice; no source was at hand." : `Source: ${source}.`;
