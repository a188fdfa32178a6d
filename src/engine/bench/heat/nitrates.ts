/**
 * Nitrates and nitrites. Above about 600 C nitrogen dioxide itself is nitrogen monoxide and oxygen, so both are tried: the monoxide
 * comes at the lower temperature where the salt is stable enough to last until then.
 */

import { saltOf } from "../salt.ts";
import { rowOf } from "./figures.ts";
import type { MakeUp } from "./make-up.ts";
import { freeMetal, higherOxides, oxideOf } from "./oxide-series.ts";
import { gas, solid } from "./reaction.ts";
import type { Ways } from "./ways.ts";

export function nitrateWays({ water, cations, anions }: MakeUp): Ways {
  const [cation] = cations;
  if (water > 0 || cations.length !== 1 || cation === "NH4+") return [];
  if (anions[0] === "NO2-") return [[solid(oxideOf(cation)), gas("NO2"), gas("NO")]];
  if (anions[0] !== "NO3-") return [];
  const nitrite = solid(saltOf(cation, "NO2-").formula);
  const left = [oxideOf(cation), ...higherOxides(cation), ...freeMetal(cation)];
  return [
    ...(rowOf(nitrite) === undefined ? [] : [[nitrite, gas("O2")]]),
    ...left.flatMap((formula) => [
      [solid(formula), gas("NO2"), gas("O2")],
      [solid(formula), gas("NO2")],
      [solid(formula), gas("NO"), gas("O2")],
    ]),
  ];
}
