/** Mixtures of metals and solutions that the engine has no chemistry for: a test that makes one is left without an opinion. */
import { TEMPERATURE } from "../constants/kinetic-gates.ts";
import type { Tube } from "./tube.ts";

/** What zinc displaces, or what oxidises it, besides dilute acid (standard potentials, any data book): no gate says how far in minutes. */
const ACTS_ON_ZINC = [
  ...["Cu^2+", "Cu+", "Ag+", "Pb^2+", "Fe^3+", "Fe^2+", "Co^2+", "Ni^2+", "Cr^3+"],
  ...["MnO4-", "CrO4^2-", "[Fe(CN)6]^3-", "I2", "Br2", "Cl2", "H2O2", "NO2-", "SO3^2-", "S2O3^2-"],
];
/** More acid than this, pH, and nitrate takes part; more alkaline than that, and zinc dissolves when warm. Our choice. */
const ACID = 3;
const ALKALI = 11;

/** True when a metal in the tube would do something the constants and gates do not cover. */
export const beyondUs = (tube: Tube): boolean => foilBeyondUs(tube) || zincBeyondUs(tube);

/** Foil outside warm alkali displaces metals and dissolves in acids at its own pace. */
function foilBeyondUs({ contents, celsius, reactions }: Tube): boolean {
  if (contents["Al(s)"] === undefined || celsius <= TEMPERATURE.room.value) return false;
  return ![...reactions.keys()].some((equation) => equation.includes("Al(s)"));
}

function zincBeyondUs({ contents, celsius, result }: Tube): boolean {
  if (contents["Zn(s)"] === undefined) return false;
  const holds = (id: string) => (contents[id] ?? 0) > 0;
  const pH = result?.pH ?? 7;
  if (holds("NO3-") && pH < ACID) return true;
  if (pH > ALKALI && celsius > TEMPERATURE.room.value) return true;
  return ACTS_ON_ZINC.some(holds);
}
