/** Rounding as a prep room does: volumes made up, bottles filled and set out. */
import { bottleOf } from "#words/class-sheet.ts";
import { BOTTLES, CLASS_PRACTICE, MADE_UP, WASTE_BOTTLES } from "../../constants/class-practice.ts";
import { tidy } from "../portions.ts";

const upTo = (amount: number, step: number): number => tidy(Math.ceil(tidy(amount / step)) * step);

/**
 * The volume to make up when so much is wanted, cm3: never less, in steps a measuring cylinder shows.
 *
 * @example madeUp(46.8) // 50
 * @example madeUp(203) // 225
 */
export function madeUp(cm3: number): number {
  const { step } = MADE_UP.find((row) => cm3 <= row.upTo) ?? MADE_UP[MADE_UP.length - 1];
  return Math.max(CLASS_PRACTICE.leastMadeUp.value, upTo(cm3, step));
}

/** What goes into bottles for the class. */
export interface Bottled {
  /** "25 cm3 dropper bottle" */
  size: string;
  /** For each group. */
  each: number;
  count: number;
  /** In each bottle, cm3. */
  fillCm3: number;
}

/** The smallest bottle that holds what a group is given, cm3, without being full; of the largest as many as it takes. */
export function bottled(groupCm3: number, groups: number): Bottled {
  const given = Math.max(CLASS_PRACTICE.fillStep.value, upTo(groupCm3, CLASS_PRACTICE.fillStep.value));
  const usable = ({ cm3 }: { cm3: number }) => cm3 * CLASS_PRACTICE.bottleFill.value;
  const bottle = BOTTLES.find((one) => usable(one) >= given) ?? BOTTLES[BOTTLES.length - 1];
  const each = Math.ceil(given / usable(bottle));
  return {
    size: bottleOf(bottle.cm3, bottle.name),
    each,
    count: each * groups,
    fillCm3: upTo(given / each, CLASS_PRACTICE.fillStep.value),
  };
}

/** Waste bottles that hold so much without being full: size in cm3, and how many. */
export function wasteBottles(cm3: number): { sizeCm3: number; count: number } {
  const usable = (size: number) => size * CLASS_PRACTICE.wasteFill.value;
  const sizeCm3 = WASTE_BOTTLES.find((size) => usable(size) >= cm3) ?? WASTE_BOTTLES[WASTE_BOTTLES.length - 1];
  return { sizeCm3, count: Math.max(1, Math.ceil(tidy(cm3 / usable(sizeCm3)))) };
}
