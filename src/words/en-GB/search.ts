/** Search. */
import type { HazardKind } from "../../engine/constants/hazard-kinds.ts";

export const SEARCH = "Search";
export const DESCRIPTION = "Find a practical, a test, an ion, a reagent or a caution.";
export const A_WORD = "A word, an ion, a reagent";
export const NARROW = "Narrow down";
export const KIND = "Kind of page";
export const ANY = "any";
export const FACETS = { ion: "Ion", gas: "Gas", reagent: "Reagent", hazard: "Hazard" };
export const hazard = (kind: HazardKind): string => kind;
export const NEEDS_SCRIPT = "Searching needs JavaScript. The list below holds every page.";
export const HOW_TO_ASK = "How to ask";
/** Around examples and keys. */
export const FORMULAS = "Formulas as you type them:";
export const OR_THE_NAME = ", or the name.";
export const KEYS = {
  arrows: "Keys: the arrows walk through what was found,",
  opens: "opens,",
  or: "or",
  back: "goes back to the question.",
};
export const ALL_PAGES = "All pages";
/** Kinds of page as headings, and within a sentence. */
export const PAGE_KINDS = {
  practical: "Practicals",
  "ion test": "Ion tests",
  ion: "Ions",
  method: "Method",
  caution: "Cautions",
};
export const showMore = (more: number, kind: keyof typeof PAGE_KINDS) =>
  `Show ${more} more of ${PAGE_KINDS[kind].toLowerCase()}`;

export const SEARCHING = "Searching …";
export const NOT_LOADED = "The search index could not be loaded. The list below holds every page.";
const forQuestion = (question: string) => question && ` for “${question}”`;
export const nothing = (question: string, narrowed: boolean) =>
  `Nothing found${forQuestion(question)}. ${narrowed ? "Take away a choice under “Narrow down”." : "Try one word, or the name of an ion."}`;
/** @param formulas how formulas were understood, each by name and as it is printed */
export const found = (count: number, question: string, formulas: readonly (readonly string[])[]) =>
  `${count} ${count === 1 ? "page" : "pages"}${forQuestion(question)}${formulas.length > 0 ? `, read as ${formulas.map((ways) => ways.join(" or ")).join(", ")}` : ""}.`;
export const instead = (question: string, found: string) => `Nothing found for “${question}”. Shown instead: ${found}`;

/** Substances that pages name by words; the names of ions are in the engine's own table. Reagents and gases of the engine are all here: a test counts. */
export const SUBSTANCES: Readonly<Record<string, string>> = {
  NaOH: "sodium hydroxide",
  NH3: "ammonia",
  HCl: "hydrochloric acid",
  HNO3: "nitric acid",
  H2SO4: "sulfuric acid",
  CH3COOH: "ethanoic acid",
  KI: "potassium iodide",
  KMnO4: "potassium manganate(VII)",
  K2CrO4: "potassium chromate(VI)",
  K2Cr2O7: "dichromate(VI)",
  KSCN: "potassium thiocyanate",
  "K4[Fe(CN)6]": "potassium hexacyanoferrate(II)",
  "K3[Fe(CN)6]": "potassium hexacyanoferrate(III)",
  "Ca(OH)2": "limewater",
  H2O: "water",
  H2O2: "hydrogen peroxide",
  CO2: "carbon dioxide",
  SO2: "sulfur dioxide",
  NO2: "nitrogen dioxide",
  H2: "hydrogen",
  O2: "oxygen",
  Cl2: "chlorine",
  I2: "iodine",
};

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
  // "copper (II)", "iron 3+": the number belongs to the metal.
  [/\b([a-z]+) \((i{1,3}|iv|vii?)\)/g, "$1($2)"],
];

/** Words too common to be asked of a page. */
const FILLERS = new Set("a an and are for how i in is ion ions of on or test tests the to what which with".split(" "));

/** A question in lower case, spelt as the pages spell. */
export const ourSpelling = (question: string): string =>
  SPELLINGS.reduce((text, [other, same]) => text.replace(other, same), question);
export const isFiller = (word: string): boolean => FILLERS.has(word);
