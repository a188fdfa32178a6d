/** How much gas a heated solid gives. */
import type { Heating } from "../../constants/heating.ts";
import { parseFormula } from "../../formula/parse.ts";
import { courseOf } from "./course.ts";

/** Of a change that stays incomplete in the minutes of a test, this part is counted (our choice). */
const PARTLY = 0.5;

/** Elements that gas carries away; any other tells how much of a solid is there, for all of it stays in one solid until it changes. */
const MAY_LEAVE = ["H", "C", "O", "S"];

/**
 * Moles of carbon dioxide, of sulfur dioxide and of gas in all, steam too, that one mole of a solid gives in the flame.
 * @throws what `heatSolid` throws
 */
export function gasesPerMole(formula: string, how: Heating): { CO2: number; SO2: number; all: number } {
  const given = { CO2: 0, SO2: 0, all: 0 };
  const own = parseFormula(formula).elements;
  for (const { reaction, happens, partly } of courseOf(formula, how).changes) {
    const [first] = reaction.from;
    const atoms = Object.entries(parseFormula(first.formula).elements).find(([symbol]) => !MAY_LEAVE.includes(symbol));
    if (!happens || !atoms) continue;
    const [symbol, count] = atoms;
    const turns = ((own[symbol] ?? 0) / (count * first.count)) * (partly ? PARTLY : 1);
    for (const { formula: product, state, count: moles } of reaction.to) {
      if (state !== "g") continue;
      given.all += moles * turns;
      if (product === "CO2" || product === "SO2") given[product] += moles * turns;
    }
  }
  return given;
}
