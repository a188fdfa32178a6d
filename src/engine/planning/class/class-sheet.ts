/** The preparation sheet of a class from what one group needs: plain arithmetic, light enough to run at every key a reader presses. */

import { testsUseMore, whyScarce } from "#words/class-sheet.ts";
import { BENCH_PRACTICE } from "../../constants/bench-practice.ts";
import { CLASS_PRACTICE, SCARCE } from "../../constants/class-practice.ts";
import { printed, tidy, withSpare } from "../portions.ts";
import { type Bottled, bottled, madeUp, wasteBottles } from "./bottles.ts";
import { type ClassSize, checkClassSize } from "./class-size.ts";
import {
  type Choice,
  type Counted,
  type GroupNeeds,
  type Ingredient,
  measuredPerDm3,
  type Supply,
  type WasteNeed,
} from "./supply.ts";

/** A choice with its amount for the whole class, g or cm3. */
export interface Taken extends Choice {
  amount: number;
}

export interface PreparedSupply extends Omit<Supply, "recipe"> {
  /** What the class uses, spare included, cm3 or g: the least to have. */
  wanted: number;
  /** What is made up or weighed out, cm3 or g. */
  make: number;
  /** Each any one of its choices. */
  ingredients: Taken[][];
  method: string;
  /** Water to begin with, cm3; 0 where nothing is dissolved or diluted, or where next to none fits. */
  waterFirstCm3: number;
  /** Of a solution, unless no group gets any of it. */
  bottles?: Bottled;
  /** Of a solid: for each group, g. */
  tubesG?: number;
}

/** What is taken out of the store for all bottles together. */
export interface StoreRow {
  what: string;
  formula?: string;
  amount: number;
  unit: "g" | "cm3";
  /** Why its grams are counted. */
  scarce?: string;
}

export interface ClassSheet {
  size: ClassSize;
  supplies: PreparedSupply[];
  store: StoreRow[];
  counted: (Counted & { count: number; g?: number })[];
  withTeacher: string[];
  waste: (WasteNeed & { classCm3: number; sizeCm3: number; count: number })[];
  warnings: string[];
}

/** What one group is given, cm3 or g: a sample as the reader says or as the plan sets out, a reagent with the class's spare. */
function groupAmount({ kind, of, used, given, apart = 0 }: Supply, size: ClassSize): number {
  if (kind === "sample") return (of === "solution" ? size.sampleCm3 : size.sampleG) ?? given ?? used;
  return Math.max(BENCH_PRACTICE.setOutLeast.value, withSpare(used - apart, size.sparePercent / 100));
}

/** In all, with spare: of a reagent what the tests use, of a sample what is given out. */
const wantedOf = (supply: Supply, size: ClassSize): number =>
  withSpare(
    (supply.kind === "sample" ? groupAmount(supply, size) : supply.used) * size.groups,
    size.sparePercent / 100,
  );

const takenOf = (ingredients: readonly Ingredient[], amountOf: (choice: Choice) => number): Taken[][] =>
  ingredients.map((choices) => choices.map((choice) => ({ ...choice, amount: amountOf(choice) })));

/**
 * Water to begin with, cm3, so that everything still goes in before the mark is reached; none where nothing is dissolved or diluted.
 *
 * @example 25 cm3 of dilute acid in 50 cm3: 90 % of the 25 cm3 left are 22.5, which stands as 20
 */
function waterFirst(ingredients: readonly Ingredient[], make: number): number {
  if (ingredients.length === 0) return 0;
  const { waterFirst, waterOfRoom, waterStep } = CLASS_PRACTICE;
  const room = make - (measuredPerDm3(ingredients) * make) / 1000;
  const most = Math.min(make * waterFirst.value, room * waterOfRoom.value);
  return Math.floor(tidy(most / waterStep.value)) * waterStep.value;
}

function prepared({ recipe, ...supply }: Supply, size: ClassSize): PreparedSupply {
  const whole = { ...supply, recipe };
  const wanted = wantedOf(whole, size);
  const perGroup = groupAmount(whole, size);
  const { method } = recipe;
  if (supply.of === "solid") {
    const make = Math.ceil(tidy(wanted * 10)) / 10;
    return {
      ...supply,
      wanted,
      make,
      ingredients: takenOf(recipe.ingredients, () => make),
      method,
      waterFirstCm3: 0,
      tubesG: perGroup,
    };
  }
  // What stands in the waste bottles only is in no bottle of a group.
  const { apart = 0 } = supply;
  const bottles = apart > 0 && apart >= supply.used ? undefined : bottled(perGroup, size.groups);
  const filled = bottles ? bottles.count * bottles.fillCm3 : 0;
  const make = madeUp(Math.max(wanted, filled + apart * size.groups));
  return {
    ...supply,
    wanted,
    make,
    ingredients: takenOf(recipe.ingredients, ({ perDm3 }) => (perDm3 * make) / 1000),
    method,
    waterFirstCm3: waterFirst(recipe.ingredients, make),
    ...(bottles && { bottles }),
  };
}

/** The usual choice of everything, added up over all bottles, scarce things first. */
function storeRows(supplies: readonly PreparedSupply[]): StoreRow[] {
  const rows = new Map<string, StoreRow>();
  for (const [usual] of supplies.flatMap(({ ingredients }) => ingredients)) {
    const key = `${usual.what} ${usual.unit}`;
    const row = SCARCE.find(({ element }) => new RegExp(`${element}(?![a-z])`).test(usual.formula ?? ""));
    const scarce = row && whyScarce(row.element, row.why);
    rows.set(key, {
      what: usual.what,
      ...(usual.formula && { formula: usual.formula }),
      amount: (rows.get(key)?.amount ?? 0) + usual.amount,
      unit: usual.unit,
      ...(scarce && { scarce }),
    });
  }
  return [...rows.values()].sort((a, b) => Number(b.scarce !== undefined) - Number(a.scarce !== undefined));
}

function warningsFor({ kind, of, label, used }: Supply, given: number): string[] {
  if (kind !== "sample" || given >= used) return [];
  const unit = of === "solution" ? "cm3" : "g";
  return [testsUseMore(`${printed(used)} ${unit}`, label, `${printed(given)} ${unit}`)];
}

/**
 * The sheet for a class.
 *
 * @param needs what one group needs, from `groupNeeds`
 * @returns volumes in cm3, masses in g; amounts unrounded except what is made up, filled and counted
 * @throws RangeError for a class that cannot be, with what was found and expected
 */
export function classSheet(needs: GroupNeeds, size: ClassSize): ClassSheet {
  checkClassSize(size);
  const supplies = needs.supplies.map((supply) => prepared(supply, size));
  return {
    size,
    supplies,
    store: storeRows(supplies),
    counted: needs.counted.map((one) => ({
      ...one,
      count: one.perGroup * size.groups,
      ...(one.gEach && { g: tidy(one.gEach * one.perGroup * size.groups) }),
    })),
    withTeacher: needs.withTeacher,
    waste: needs.waste.map((one) => {
      // What stands in the bottle was in no tube, so it is not rinsed out of one.
      const standing = one.first.reduce((sum, { cm3 }) => sum + cm3, 0);
      const emptied = (one.cm3 - standing) * CLASS_PRACTICE.wasteWithRinsing.value;
      const classCm3 = tidy((emptied + standing) * size.groups);
      const first = one.first.map(({ name, cm3 }) => ({ name, cm3: tidy(cm3 * size.groups) }));
      return { ...one, first, classCm3, ...wasteBottles(classCm3) };
    }),
    warnings: needs.supplies.flatMap((supply) => warningsFor(supply, groupAmount(supply, size))),
  };
}
