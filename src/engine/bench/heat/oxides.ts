/** Oxides that lose oxygen, manganate(VII), and the elements that go up as vapour. */
import type { MakeUp } from "./make-up.ts";
import { lowerOxides, oxideFrom } from "./oxide-series.ts";
import { gas, solid } from "./reaction.ts";
import type { Ways } from "./ways.ts";

const VAPOURS: readonly string[] = ["I2"];

export function oxideWays({ anions }: MakeUp, formula: string): Ways {
  if (VAPOURS.includes(formula)) return [[gas(formula)]];
  if (anions[0] === "MnO4-") return [[solid("K2MnO4"), solid("MnO2"), gas("O2")]];
  const oxide = oxideFrom(formula);
  return oxide === undefined ? [] : lowerOxides(oxide).map((lower) => [solid(lower), gas("O2")]);
}
