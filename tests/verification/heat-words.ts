/** Reads the words of a published heating row: which solids, which colours, which gases. */
import { COLOURS } from "../../src/engine/constants/colours.ts";
import { parseFormula } from "../../src/engine/formula/parse.ts";
import { colourSynonyms, type PublishedRow } from "./qualitative-rows.ts";

/** What a bench calls by another name than the bottle. */
const BOTTLES: Readonly<Record<string, string>> = { "CuCO3 (basic, green)": "CuCO3*Cu(OH)2" };

/** The solids a row speaks of, in mhchem. */
export function solidsOf({ ion }: PublishedRow): string[] {
  const bottle = BOTTLES[ion];
  if (bottle !== undefined) return [bottle];
  const named = ion.replace(/ \([^()]*[a-z]{4}[^()]*\)/g, "");
  return named
    .split(/ or | \/ /)
    .map((part) => part.split(" ").at(-1) ?? "")
    .map((word) => word.replace(/\.(?=\d*H2O)/, "*"))
    .filter(isFormula);
}

function isFormula(word: string): boolean {
  try {
    parseFormula(word);
    return true;
  } catch {
    return false;
  }
}

/** The longest names first, so that "red-brown" is not read as "red". */
const NAMES = [...new Set([...Object.keys(COLOURS), ...Object.values(colourSynonyms).flat()])].sort(
  (a, b) => b.length - a.length,
);

/** Every colour a text names; "black-brown" names both. */
export function coloursIn(text: string): string[] {
  let rest = text;
  return NAMES.filter((name) => {
    const there = new RegExp(`(?<![a-z])${name}(?![a-z])`);
    if (!there.test(rest)) return false;
    rest = rest.replace(there, " ");
    return true;
  });
}

/** Gases by the words of the table. */
const GAS_WORDS: readonly (readonly [RegExp, string])[] = [
  [/water vapour/, "H2O"],
  ...["NH3", "CO2", "NO2", "N2O", "SO3", "SO2", "HCl", "O2", "N2", "I2"].map((gas): [RegExp, string] => [
    new RegExp(`(?<![A-Za-z])${gas}(?!O)`),
    gas,
  ]),
];

const gasesIn = (text: string): string[] => GAS_WORDS.filter(([words]) => words.test(text)).map(([, gas]) => gas);

/** Said of a gas that need not come in a test tube on a burner, or of other salts than the one named. */
const IF_AT_ALL = /only above about 800 C|from unstable|at high temperature/;

/** Gases that must come, and gases that may: those in brackets or said with a condition, and those of the notes. */
export function gasesOfRow({ observation: { gas, notes } }: PublishedRow): { must: string[]; may: string[] } {
  const text = gas ?? "";
  const always = IF_AT_ALL.test(text) ? "" : text.replace(/\([^()]*\)/g, "");
  const said = (notes ?? "").replace(/\bno [A-Z]\w+/g, "");
  const may = [...gasesIn(text), ...gasesIn(said)];
  if (text.includes("acidic fumes")) may.push("SO3", "SO2", "H2O");
  return { must: gasesIn(always), may };
}
