/** Sulfates (also double ones), sulfites and thiosulfate. */
import { saltOf } from "../salt.ts";
import type { MakeUp } from "./make-up.ts";
import { higherOxides, oxideOf } from "./oxide-series.ts";
import { gas, solid } from "./reaction.ts";
import type { Ways } from "./ways.ts";

const ALKALI: readonly string[] = ["Li+", "Na+", "K+"];

export function sulfurWays({ water, cations, anions }: MakeUp, formula: string): Ways {
  if (water > 0 || cations.includes("NH4+")) return [];
  if (formula === "Na2S5") return [[solid("Na2S"), gas("S")]];
  const alkali = cations.filter((cation) => ALKALI.includes(cation));
  const [metal = alkali[0]] = cations.filter((cation) => !ALKALI.includes(cation));
  if (metal === undefined || anions.length !== 1) return [];
  const sulfate = solid(saltOf(metal, "SO4^2-").formula);
  const sulfide = solid(saltOf(metal, "S^2-").formula);
  switch (anions[0]) {
    case "SO4^2-":
      return sulfateWays(
        metal,
        alkali.filter((cation) => cation !== metal),
      );
    case "SO3^2-":
      return [
        [solid(oxideOf(metal)), gas("SO2")],
        [sulfate, sulfide],
      ];
    case "S2O3^2-":
      return [[sulfate, solid("Na2S5")]];
    default:
      return [];
  }
}

/** Sulfate may oxidise its metal and leaves as sulfur dioxide for that; an alkali sulfate in a double salt stays. */
function sulfateWays(metal: string, alkali: readonly string[]): Ways {
  const stays = alkali.map((cation) => solid(saltOf(cation, "SO4^2-").formula));
  const oxide = solid(oxideOf(metal));
  return [
    [...stays, oxide, gas("SO3")],
    [...stays, oxide, gas("SO2"), gas("O2")],
    ...higherOxides(metal).flatMap((formula) => [
      [...stays, solid(formula), gas("SO2"), gas("SO3")],
      [...stays, solid(formula), gas("SO2")],
    ]),
  ];
}
