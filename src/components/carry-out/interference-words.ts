/** False results and borderline readings as short sentences for the step they belong to. */
import type { Borderline, Variation } from "../../engine/bench/borderline.ts";
import type { Kind } from "../../engine/bench/interference/disturbances.ts";
import type { Interference, Misled } from "../../engine/bench/interference.ts";
import { phrase } from "../../engine/wording/phrase.ts";
import { list } from "../sentence.ts";

const figures = (value: number) => String(Number(value.toPrecision(2)));

/** Salts named before they are only counted. */
const NAMED = 3;

const strength = ({ gramsPerDm3, atm }: Misled) => gramsPerDm3 ?? atm ?? 0;

/** "up to 0.04 g/dm3 of AgCl": the most any of the salts gives. */
function wordAmount(salts: readonly Misled[]): string | undefined {
  const most = salts.toSorted((a, b) => strength(b) - strength(a))[0];
  const phase = most?.phase?.replace(/\((?:s|g)(?:, [^)]*)?\)$/, "");
  if (phase === undefined) return undefined;
  const upTo = salts.length > 1 ? "up to " : "";
  if (most.gramsPerDm3 !== undefined) return `${upTo}${figures(most.gramsPerDm3)} g/dm3 of ${phase}`;
  return most.atm === undefined ? phase : `${upTo}${figures(most.atm * 1e6)} ppm of ${phase}`;
}

/** What is behind each kind of false result, as the beginning of a sentence. */
const CAUSE: Readonly<Record<Kind, string>> = {
  "chloride or sulfate of a reagent": "The reagents themselves bring chloride or sulfate",
  "ammonium not boiled off": "Ammonium that was not boiled off gives ammonia too",
  nitrite: "Nitrite gives ammonia as nitrate does",
  "sulfur dioxide": "Sulfur dioxide clouds limewater as carbon dioxide does",
  "silver sulfate": "Silver sulfate dissolves only slightly",
  "no acid, or too little": "Without enough acid other ions give a precipitate as well",
  "tap water": "Tap water holds chloride",
  "old alkali": "Alkali that has stood in air holds carbonate",
  "a hydroxide in the way": "The metal ion gives a precipitate of its own",
};

/**
 * "Tap water holds chloride: with any of 17 salts of the list, up to 0.04 g/dm3 of AgCl may be taken for a halide. Use deionised water."
 * Formulas in mhchem notation.
 */
export function wordInterference({ kind, salts, concluded, remedy }: Interference): string {
  const names = salts.map(({ salt }) => salt);
  const who = names.length > NAMED ? `any of ${names.length} salts of the list` : list(names, "or");
  const taken = salts.some(({ how }) => how === "surely") ? "is" : "may be";
  return `${CAUSE[kind]}: with ${who}, ${wordAmount(salts) ?? "what is seen"} ${taken} taken for ${concluded}. ${remedy}`;
}

function wordVariation(variation: Variation): string {
  switch (variation.of) {
    case "constant":
      return "with a constant a little off";
    case "carbonate":
      return "with the little carbonate that most alkali holds";
    case "sample":
      return `with the sample at ${figures(variation.molPerDm3)} mol/dm3`;
    case "reagent":
      return `with ${variation.id.replace(/\((?:aq|l|s)\)$/, "")} at ${figures(variation.molPerDm3)} mol/dm3`;
  }
}

/** "R is near a limit here: with NH3 at 0.4 mol/dm3 you would see: some of the precipitate dissolves. Check the strength on the bottle." */
export function wordBorderline(letter: string, { flips }: Borderline): string {
  const ways = new Map(flips.map(({ variation, reading }) => [phrase(reading), wordVariation(variation)]));
  const strengths = flips.some(({ variation }) => "molPerDm3" in variation);
  const advice = strengths ? " Check the strength on the bottle." : "";
  const instead = [...ways].map(([seen, way]) => `${way} you would see: ${seen}`);
  return `${letter} is near a limit here: ${instead.join("; ")}.${advice}`;
}
