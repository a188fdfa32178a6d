/** Figures as the language of the page writes them: 0.1 or 0,1. */
import { LANGUAGE } from "#words/language.ts";

// As many decimals as the number has: rounding is for those who know what it is a number of. Long ones are not cut up into groups.
const FORMAT = new Intl.NumberFormat(LANGUAGE, { useGrouping: false, maximumFractionDigits: 20 });
const [, DECIMAL_SIGN] = FORMAT.format(0.5);

/** @example figures(2.5) // "2.5", in German "2,5" */
export const figures = (number: number): string => FORMAT.format(number);

/**
 * A sentence of the engine, which writes a decimal point, with its figures as the language writes them. A formula, a label and the end of a
 * sentence are left alone.
 *
 * @example withFigures("0.1 mol/dm3 in 2.5 cm3") // the same; in German "0,1 mol/dm3 in 2,5 cm3"
 */
export const withFigures = (text: string): string =>
  DECIMAL_SIGN === "." ? text : text.replace(/(?<![\w.)])(\d+)\.(\d+)(?!\w|\.\d)/g, `$1${DECIMAL_SIGN}$2`);
