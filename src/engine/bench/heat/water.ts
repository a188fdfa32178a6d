/** Water that leaves: of crystallisation, alone or with hydrogen chloride; and of hydroxides. */
import { solidRows } from "./figures.ts";
import { hydrate, type MakeUp } from "./make-up.ts";
import { metalOf, oxideOf } from "./oxide-series.ts";
import { gas, solid } from "./reaction.ts";
import type { Ways } from "./ways.ts";

/** Hydrates: to every lower hydrate with a row and to the dry salt; chlorides also to the oxide or basic chloride. */
export function waterWays({ water, dry, cations, anions }: MakeUp): Ways {
  if (water === 0) return [];
  const lower = solidRows
    .filter(({ makeUp }) => makeUp.dry === dry && makeUp.water > 0 && makeUp.water < water)
    .map(({ makeUp }) => makeUp.water);
  const drying: Ways = [...lower.sort((a, b) => b - a), 0].map((left) => [solid(hydrate(dry, left)), gas("H2O")]);
  return cations.length === 1 && anions.length === 1 ? [...withTheAnion(cations[0], anions[0]), ...drying] : drying;
}

/** Chlorides and nitrates of small, highly charged ions cannot be dried: the acid leaves with the water. Tried before drying. */
function withTheAnion(cation: string, anion: string): Ways {
  const oxide = solid(oxideOf(cation));
  if (anion === "NO3-") return [[oxide, gas("H2O"), gas("NO2"), gas("O2")]];
  if (anion !== "Cl-") return [];
  const basic = solid(`${metalOf(cation)}(OH)Cl`);
  return [
    [oxide, gas("H2O"), gas("HCl")],
    [oxide, gas("HCl")],
    [basic, gas("HCl")],
    [basic, gas("H2O"), gas("HCl")],
  ];
}

/** Hydroxides to oxides; a basic chloride to oxide and hydrogen chloride. */
export function hydroxideWays({ water, cations, anions }: MakeUp): Ways {
  if (water > 0 || cations.length !== 1 || !anions.includes("OH-")) return [];
  const oxide = solid(oxideOf(cations[0]));
  if (anions.length === 1) return [[oxide, gas("H2O")]];
  return anions.includes("Cl-") ? [[oxide, gas("HCl")]] : [];
}
