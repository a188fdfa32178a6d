/** False results and borderline readings as short sentences for the step they belong to. */
import type { Borderline, Variation } from "../../engine/bench/borderline.ts";
import type { Interference, Misled } from "../../engine/bench/interference.ts";
import { phrase } from "../../engine/wording/phrase.ts";
import { capital } from "../capital.ts";
import { list } from "../sentence.ts";

const figures = (value: number) => String(Number(value.toPrecision(2)));

/** Salts named before they are only counted. */
const NAMED = 3;

const strength = ({ gramsPerDm3, atm }: Misled) => gramsPerDm3 ?? atm ?? 0;

/** "0.04 g/dm3 of AgCl", the most any of the salts gives. */
function wordAmount(salts: readonly Misled[]): string | undefined {
  const most = salts.toSorted((a, b) => strength(b) - strength(a))[0];
  const phase = most?.phase?.replace(/\((?:s|g)(?:, [^)]*)?\)$/, "");
  if (phase === undefined) return undefined;
  if (most.gramsPerDm3 !== undefined) return `${figures(most.gramsPerDm3)} g/dm3 of ${phase}`;
  return most.atm === undefined ? phase : `${figures(most.atm * 1e6)} ppm of ${phase}`;
}

/** "Tap water: with 17 salts, 0.04 g/dm3 of AgCl may be taken for a halide. Use deionised water." Formulas in mhchem notation. */
export function wordInterference({ kind, salts, concluded, remedy }: Interference): string {
  const who = salts.length > NAMED ? `${salts.length} salts of the list` : list(salts.map(({ salt }) => salt));
  const taken = salts.some(({ how }) => how === "surely") ? "is" : "may be";
  return `${capital(kind)}: with ${who}, ${wordAmount(salts) ?? "what is seen"} ${taken} taken for ${concluded}. ${remedy}`;
}

function wordVariation(variation: Variation): string {
  if (variation.of === "constant") return "with a constant a little off";
  if (variation.of === "carbonate") return "with alkali that holds a little carbonate, as most does,";
  const what = variation.of === "sample" ? "a sample" : variation.id.replace(/\((?:aq|l|s)\)$/, "");
  return `with ${what} at ${figures(variation.molPerDm3)} mol/dm3`;
}

/** "Borderline for R: with NH3 at 0.4 mol/dm3 it would read: some of the precipitate dissolves. Check the strength on the bottle." */
export function wordBorderline(letter: string, { flips }: Borderline): string {
  const ways = new Map(flips.map(({ variation, reading }) => [phrase(reading), wordVariation(variation)]));
  const strengths = flips.some(({ variation }) => "molPerDm3" in variation);
  const advice = strengths ? " Check the strength on the bottle." : "";
  return `Borderline for ${letter}: ${list([...ways].map(([seen, way]) => `${way} it would read: ${seen}`))}.${advice}`;
}
