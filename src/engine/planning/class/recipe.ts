/** How a solution is made up: what is weighed or measured for each dm3, and in what manner. */
import { saidOnSheet } from "#words/class-recipes.ts";
import { makings } from "../../constants/preparation.ts";
import type { Reagent } from "../../constants/reagents.ts";
import { type Stock, stocks } from "../../constants/stocks.ts";
import { bottleNamed, bottlesOf, weighed } from "./store-bottles.ts";
import { type Choice, type Ingredient, measuredPerDm3, type Recipe } from "./supply.ts";

const DISSOLVE = "Dissolve in deionised water, stirring, and make up.";
const MEASURE = "Measure it into most of the water, stirring, and make up.";

/** The stock with this id. Throws a RangeError that names the ids there are. */
export function stockOf(id: string): Stock {
  const stock = stocks.find((one) => one.id === id);
  if (stock) return stock;
  throw new RangeError(`class sheet, stocks: found "${id}", expected one of ${stocks.map((one) => one.id).join(", ")}`);
}

/**
 * A stock as what is measured of it.
 *
 * @param molPerDm3 of the solution to be made
 * @throws RangeError when that is no weaker than the stock
 * @example measured(stockOf("880 ammonia"), 1).perDm3 // 56 cm3
 */
export function measured({ name, cm3PerMol, care, source }: Stock, molPerDm3: number): Choice {
  const strongest = 1000 / cm3PerMol;
  if (molPerDm3 > 0 && molPerDm3 < strongest)
    return { what: saidOnSheet(name), perDm3: molPerDm3 * cm3PerMol, unit: "cm3", care: saidOnSheet(care), source };
  throw new RangeError(
    `class sheet, ${name}: found a solution of ${molPerDm3} mol/dm3, expected one weaker than its ${strongest.toPrecision(3)} mol/dm3; ask for a weaker reagent`,
  );
}

/** A salt in solution, as a sample: every bottle of it that a store may have. Of a mixture (salts joined by " + "), each at the strength. */
export function saltRecipe(salt: string, molPerDm3: number): Recipe {
  const ingredients = salt
    .split(" + ")
    .map((one): Ingredient => bottlesOf(one.trim()).map((bottle) => weighed(bottle, molPerDm3)));
  return { ingredients, method: saidOnSheet(DISSOLVE) };
}

/**
 * A reagent at a strength, mol/dm3; null where strength has no meaning.
 *
 * @throws RangeError for a strength at or above that of the stock, or one that leaves no room for the acid it is made up with
 */
export function reagentRecipe(reagent: Reagent, molPerDm3: number | null): Recipe {
  const making = makings[reagent.id];
  if (making?.ready) return { ingredients: [], method: saidOnSheet(making.method ?? "Bought ready made.") };
  const acid = reagent.sulfuricAcid ? [[measured(stockOf("dilute sulfuric acid"), reagent.sulfuricAcid)]] : [];
  const ingredients = [...solute(reagent, molPerDm3), ...acid];
  const liquid = measuredPerDm3(ingredients);
  if (liquid >= 1000)
    throw new RangeError(
      `class sheet, ${reagent.name}: found ${Math.round(liquid)} cm3 of liquids for 1 dm3 of ${molPerDm3} mol/dm3, expected less than 1000 cm3; ask for a weaker reagent`,
    );
  return {
    ingredients,
    method: saidOnSheet(making?.method ?? (making?.stocks ? MEASURE : DISSOLVE)),
  };
}

function solute(reagent: Reagent, molPerDm3: number | null): Ingredient[] {
  const making = makings[reagent.id];
  if (making?.grams) {
    const full = reagent.concentration;
    const part = molPerDm3 !== null && full !== null ? molPerDm3 / full : 1;
    return making.grams.map(({ what, perDm3 }) => [{ what: saidOnSheet(what), perDm3: perDm3 * part, unit: "g" }]);
  }
  if (molPerDm3 === null) return [];
  if (making?.stocks) {
    return [making.stocks.map((id) => measured(stockOf(id), molPerDm3))];
  }
  if (making?.weigh) {
    return making.weigh.map(({ bought, molPerMol }) =>
      bought.map((formula) => weighed(bottleNamed(formula), molPerDm3 * molPerMol)),
    );
  }
  return [bottlesOf(reagent.formula ?? "").map((bottle) => weighed(bottle, molPerDm3))];
}
