/** A sentence about ions and salts as it is said: by their names, for a formula read out letter by letter tells nobody anything. */
import { HOLDS } from "#words/what-changed.ts";

/** "zinc sulfate, ZnSO4: Zn^2+ and SO4^2-" and "zinc sulfate, ZnSO4, but": the formula, and the ions it stands for. */
const FORMULA_OF_NAME = new RegExp(`(${HOLDS} [^,:;.]+), [^,:;.]+(?::[^;.]*)?(?=[.,;]|$)`, "g");
/** "calcium (Ca^2+)" */
const ION_OF_NAME = / \([A-Z[][A-Za-z0-9()[\]^]*[+-]\)/g;

/**
 * Leaves out formulas that stand beside the name.
 *
 * @example aloud("K holds zinc sulfate, ZnSO4: Zn^2+ and SO4^2-.") // "K holds zinc sulfate."
 */
export const aloud = (sentence: string): string => sentence.replace(FORMULA_OF_NAME, "$1").replace(ION_OF_NAME, "");
