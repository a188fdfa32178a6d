import { elementSymbols } from "./element-symbols.ts";
import { FormulaError } from "./formula-error.ts";

export { FormulaError } from "./formula-error.ts";

export type State = "aq" | "s" | "g" | "l";

export type Formula = {
  /** The formula as written, without surrounding spaces. */
  readonly text: string;
  /** Atoms of each element in one formula unit, water of crystallisation included. */
  readonly elements: Readonly<Record<string, number>>;
  /** Charge number: 2 for `Cu^2+`. */
  readonly charge: number;
  readonly state?: State;
  /** The form of a solid: `fresh` in `Al(OH)3(s, fresh)`. */
  readonly form?: string;
};

/** No formula of this trade is longer; the reader below calls itself for each bracket, so length bounds its depth. */
const LONGEST = 200;

type Atoms = Record<string, number>;

const STATE = /^\((aq|s|l|g)(?:, ?([^(),]+))?\)$/;
const CLOSING: Readonly<Record<string, string>> = { "(": ")", "[": "]" };

/**
 * Reads one formula in mhchem notation: elements, `( )` and `[ ]`, counts, a charge (`+`, `-`, `^2+`, `^3-`), water of
 * crystallisation (`*5H2O` or `.5H2O`), and a state at the end (`(aq)`, `(s)`, `(l)`, `(g)`), a solid with its form if
 * wanted (`(s, fresh)`). The electron is `e-`.
 *
 * @throws {FormulaError} naming what was found, at which character, and what was expected.
 * @example parseFormula("[Ag(NH3)2]+") // elements { Ag: 1, N: 2, H: 6 }, charge 1
 */
export function parseFormula(text: string): Formula {
  const formula = text.trim();
  const fail = (at: number, expected: string, found = describe(formula, at)): never => {
    throw new FormulaError(formula, at + 1, found, expected);
  };
  if (formula.length > LONGEST) fail(0, `at most ${LONGEST} characters`, `${formula.length} characters`);
  if (formula === "") fail(0, "a formula such as CuSO4*5H2O", "nothing");
  if (formula === "e-") return { text: formula, elements: {}, charge: -1 };

  let at = 0;

  const count = (): number => {
    const digits = /^\d+/.exec(formula.slice(at))?.[0];
    if (digits === undefined) return 1;
    if (digits.startsWith("0")) fail(at, "a count of 1 or more, without a leading zero", `"${digits}"`);
    at += digits.length;
    return Number(digits);
  };

  const element = (): Atoms => {
    const symbol = /^[A-Z][a-z]?/.exec(formula.slice(at))?.[0] ?? "";
    if (!elementSymbols.has(symbol)) fail(at, "the symbol of an element", `"${symbol}"`);
    at += symbol.length;
    return { [symbol]: count() };
  };

  const group = (opening: string, openedAt: number): Atoms => {
    const closing = CLOSING[opening];
    at += 1;
    const inside = atoms();
    if (formula[at] !== closing) fail(at, `"${closing}" to close the "${opening}" of character ${openedAt + 1}`);
    at += 1;
    return times(inside, count());
  };

  const atoms = (): Atoms => {
    const start = at;
    let total: Atoms = {};
    while (at < formula.length) {
      const sign = formula[at];
      if (/[A-Z]/.test(sign)) total = sum(total, element());
      else if (sign in CLOSING && !/[a-z]/.test(formula[at + 1] ?? "")) total = sum(total, group(sign, at));
      else break;
    }
    if (at === start) fail(at, "the symbol of an element or an opening bracket");
    return total;
  };

  let elements = atoms();
  while (formula[at] === "*" || formula[at] === ".") {
    at += 1;
    const number = /^\d+(\.\d+)?/.exec(formula.slice(at))?.[0];
    if (number !== undefined && Number(number) === 0) fail(at, "a number above 0", `"${number}"`);
    at += number?.length ?? 0;
    elements = sum(elements, times(atoms(), Number(number ?? 1)));
  }

  let charge = 0;
  const chargeText = /^(?:\^(\d*))?([+-])/.exec(formula.slice(at));
  if (chargeText !== null) {
    const size = chargeText[1] ? Number(chargeText[1]) : 1;
    if (size === 0) fail(at, "a charge such as ^2+, or none", `"${chargeText[0]}"`);
    charge = chargeText[2] === "+" ? size : -size;
    at += chargeText[0].length;
  } else if (formula[at] === "^") {
    fail(at, "a charge such as ^2+ or ^3-", `"${formula.slice(at)}"`);
  }

  if (at === formula.length) return { text: formula, elements, charge };
  if (formula[at] !== "(") {
    const more = charge === 0 ? "an element, a bracket, *, a charge such as ^2+, " : "";
    fail(at, `${more}a state such as (aq), or the end${charge === 0 ? "" : " (a charge above 1 is written ^2+)"}`);
  }
  const suffix = STATE.exec(formula.slice(at));
  if (suffix === null || (suffix[2] !== undefined && suffix[1] !== "s")) {
    fail(
      at,
      "one of the states (aq), (s), (l), (g), or a solid with its form such as (s, fresh)",
      `"${formula.slice(at)}"`,
    );
  }
  const [, state, form] = suffix as RegExpExecArray;
  return { text: formula, elements, charge, state: state as State, ...(form === undefined ? {} : { form }) };
}

function describe(text: string, at: number): string {
  return at >= text.length ? "the end" : `"${text[at]}"`;
}

function times(atoms: Atoms, factor: number): Atoms {
  return Object.fromEntries(Object.entries(atoms).map(([symbol, n]) => [symbol, n * factor]));
}

function sum(a: Atoms, b: Atoms): Atoms {
  const total = { ...a };
  for (const [symbol, n] of Object.entries(b)) total[symbol] = (total[symbol] ?? 0) + n;
  return total;
}
