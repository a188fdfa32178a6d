/** False results and borderline readings as short sentences for the step they belong to. */
import { said } from "#words/constants.ts";
import * as say from "#words/events.ts";
import type { Borderline, Variation } from "../../engine/bench/borderline.ts";
import type { Interference, Misled } from "../../engine/bench/interference.ts";
import { phrase } from "../../engine/wording/phrase.ts";

const figures = (value: number) => String(Number(value.toPrecision(2)));

/** Salts named before they are only counted. */
const NAMED = 3;

const strength = ({ gramsPerDm3, atm }: Misled) => gramsPerDm3 ?? atm ?? 0;

/** "up to 0.04 g/dm3 of AgCl": the most any of the salts gives. */
function wordAmount(salts: readonly Misled[]): string | undefined {
  const most = salts.toSorted((a, b) => strength(b) - strength(a))[0];
  const phase = most?.phase?.replace(/\((?:s|g)(?:, [^)]*)?\)$/, "");
  if (phase === undefined) return undefined;
  const several = salts.length > 1;
  if (most.gramsPerDm3 !== undefined) return say.amountOf(`${figures(most.gramsPerDm3)} g/dm3`, phase, several);
  return most.atm === undefined ? phase : say.amountOf(`${figures(most.atm * 1e6)} ppm`, phase, several);
}

/**
 * "Tap water holds chloride: with any of 17 salts of the list, up to 0.04 g/dm3 of AgCl may be taken for a halide. Use deionised water."
 * Formulas in mhchem notation.
 */
export function wordInterference({ kind, salts, concluded, remedy }: Interference): string {
  return say.misleads({
    kind,
    salts: salts.length > NAMED ? salts.length : salts.map(({ salt }) => salt),
    amount: wordAmount(salts),
    surely: salts.some(({ how }) => how === "surely"),
    concluded: say.concluded(concluded),
    remedy: said(remedy),
  });
}

function wordVariation(variation: Variation): string {
  switch (variation.of) {
    case "constant":
      return say.WITH.constant;
    case "carbonate":
      return say.WITH.carbonate;
    case "sample":
      return say.WITH.sample(figures(variation.molPerDm3));
    case "reagent":
      return say.WITH.reagent(variation.id.replace(/\((?:aq|l|s)\)$/, ""), figures(variation.molPerDm3));
  }
}

/** "R is near a limit here: with NH3 at 0.4 mol/dm3 you would see: some of the precipitate dissolves. Check the strength on the bottle." */
export function wordBorderline(letter: string, { flips }: Borderline): string {
  const ways = new Map(flips.map(({ variation, reading }) => [phrase(reading), wordVariation(variation)]));
  const strengths = flips.some(({ variation }) => "molPerDm3" in variation);
  return say.nearLimit(
    letter,
    [...ways].map(([seen, way]) => ({ way, seen })),
    strengths,
  );
}
