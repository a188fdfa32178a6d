/** What a reader types, made into what the pages say: one spelling, names instead of formulas, and the words a page must hold. */
import { ionNames } from "../../engine/formula/ions.ts";

/** Other spellings and names, each with the one the pages use. */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/sulph/g, "sulf"],
  [/\baluminum\b/g, "aluminium"],
  [/\bcolor/g, "colour"],
  [/\bferrous\b/g, "iron(II)"],
  [/\bferric\b/g, "iron(III)"],
  [/\bcupric\b/g, "copper(II)"],
  [/\bplumbous\b/g, "lead(II)"],
  [/\bcaustic soda\b/g, "sodium hydroxide"],
  [/\bpermanganate\b/g, "manganate(VII)"],
  [/\blime water\b/g, "limewater"],
  [/\b(?:bi|hydrogen )carbonate\b/g, "carbonate"],
];

/** Substances that pages name by words; those of ions are in the engine's own table. */
const SUBSTANCES: Readonly<Record<string, string>> = {
  NaOH: "sodium hydroxide",
  NH3: "ammonia",
  HCl: "hydrochloric acid",
  HNO3: "nitric acid",
  H2SO4: "sulfuric acid",
  AgNO3: "silver nitrate",
  BaCl2: "barium chloride",
  "Ba(NO3)2": "barium nitrate",
  KI: "potassium iodide",
  KMnO4: "potassium manganate(VII)",
  "Ca(OH)2": "limewater",
  CO2: "carbon dioxide",
  SO2: "sulfur dioxide",
  H2: "hydrogen",
};

const SUB_AND_SUPERSCRIPTS = "₀₁₂₃₄₅₆₇₈₉⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻";
const PLAIN = "01234567890123456789+-";
/** Words too common to be asked of a page. */
const FILLERS = new Set("a an and are for how i in is of on or test tests the to what which with".split(" "));

/** "so42" of "SO4^2-", "SO4 2-" and "SO₄²⁻"; "so4" of "SO4". */
const bare = (formula: string) => formula.toLowerCase().replace(/[^a-z0-9()]/g, "");

/** Names by bare formula, with and without the charge: "so4" and "so42" are both sulfate. */
function formulaNames(): Map<string, string> {
  const names = new Map<string, string>();
  for (const [formula, name] of Object.entries({ ...ionNames, ...SUBSTANCES })) {
    names.set(bare(formula), name);
    const uncharged = bare(formula.replace(/(\^\d+)?[+-]$/, ""));
    // "Fe" alone is both irons: the element's name without its number.
    if (!names.has(uncharged)) names.set(uncharged, name.replace(/\(\w+\)$/, ""));
  }
  return names;
}

/** A word that may be a formula: it begins with a capital; the table of names decides. */
const FORMULA = /^\[?[A-Z][A-Za-z0-9()[\]^]*(?:[+-]|\^?\d?[+-])?$/;

/** "zinc sulfate" of "ZnSO4", "ammonium sulfate" of "(NH4)2SO4": one ion's formula, then another's, figures and brackets left aside. */
function saltName(formula: string, names: ReadonlyMap<string, string>): string | undefined {
  const salt = bare(formula).replace(/[()]/g, "");
  for (const [cation, first] of names) {
    if (!salt.startsWith(cation)) continue;
    const rest = salt.slice(cation.length);
    const uncounted = rest.replace(/^\d/, "");
    const anion = [rest, uncounted, uncounted.replace(/\d$/, "")].find((one) => names.has(one));
    if (anion) return `${first} ${names.get(anion)}`;
  }
  return undefined;
}

/**
 * The question in the words of the pages.
 *
 * @example asAsked("the test for SO4 2-") // "sulfate"
 */
export function asAsked(question: string): string {
  const names = formulaNames();
  const typed = question.replace(/[₀-₉⁰¹²³⁴-⁹⁺⁻−]/g, (sign) =>
    sign === "−" ? "-" : (PLAIN[SUB_AND_SUPERSCRIPTS.indexOf(sign)] ?? sign),
  );
  // A charge that stands apart belongs to the word before it: "SO4 2-".
  const joined = typed.replace(/(\w) (?=\d?[+-](?:\s|$))/g, "$1^");
  const words = joined.split(/\s+/).map((word) => {
    // "I" and "K" in a sentence are no ions.
    const formula = (FORMULA.test(word) && (word.length > 1 || typed.length === 1)) || /\d/.test(word);
    const name = formula ? (names.get(bare(word)) ?? saltName(word, names)) : undefined;
    return name ?? word.toLowerCase();
  });
  const ours = SPELLINGS.reduce((text, [other, same]) => text.replace(other, same), words.join(" "));
  return ours
    .split(" ")
    .filter((word) => !FILLERS.has(word))
    .join(" ");
}

/** The words a page must hold, all of them, in small letters; none when nothing but fillers was asked. */
export function wordsOf(asked: string): string[] {
  const words = asked.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  return [...new Set(words)];
}

/** A page holds a word when one of its own begins with it, an ending of grammar left aside. */
export function holds(text: string, words: readonly string[]): boolean {
  const own = text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  return words.every((word) => {
    const stem = word.length > 4 ? word.replace(/(?:ing|ed|es|s)$/, "") : word;
    return own.some((one) => one.startsWith(stem));
  });
}
