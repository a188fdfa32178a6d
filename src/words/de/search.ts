/** Search. */
import type { HazardKind } from "../../engine/constants/hazard-kinds.ts";

export const SEARCH = "Suche";
export const DESCRIPTION = "Finde einen Versuch, einen Nachweis, ein Ion, ein Reagenz oder eine Seite zur Sicherheit.";
export const A_WORD = "Ein Wort, ein Ion, ein Reagenz";
export const NARROW = "Eingrenzen";
export const KIND = "Art der Seite";
export const ANY = "alle";
export const FACETS = { ion: "Ion", gas: "Gas", reagent: "Reagenz", hazard: "Gefahr" };
const HAZARDS: Readonly<Record<HazardKind, string>> = {
  toxic: "giftig",
  corrosive: "ätzend",
  "cancer or allergy": "Krebs oder Allergie",
  "damages eyes": "schädigt die Augen",
  "hurts lungs": "schadet der Lunge",
  flammable: "entzündbar",
  "feeds a fire": "brandfördernd",
  "spurts or froths": "spritzt oder schäumt",
  heat: "Hitze",
  irritant: "reizend",
  "harms water life": "schadet Wasserlebewesen",
  stains: "macht Flecken",
  "low hazard": "geringe Gefahr",
};
export const hazard = (kind: HazardKind): string => HAZARDS[kind];
export const NEEDS_SCRIPT = "Für die Suche braucht es JavaScript. Die Liste unten enthält alle Seiten.";
export const HOW_TO_ASK = "Wie man fragt";
/** Around examples and keys. */
export const FORMULAS = "Formeln, wie du sie tippst:";
export const OR_THE_NAME = ", oder der Name.";
export const KEYS = {
  arrows: "Tasten: Die Pfeile gehen durch, was gefunden wurde,",
  opens: "öffnet,",
  or: "oder",
  back: "führt zurück zur Frage.",
};
export const ALL_PAGES = "Alle Seiten";
/** Kinds of page as headings. */
export const PAGE_KINDS = {
  practical: "Versuche",
  "ion test": "Nachweise",
  ion: "Ionen",
  method: "Vorgehen",
  caution: "Sicherheit",
};
export const showMore = (more: number, kind: keyof typeof PAGE_KINDS) => `${more} weitere zeigen: ${PAGE_KINDS[kind]}`;

export const SEARCHING = "Wird gesucht …";
export const NOT_LOADED = "Das Verzeichnis der Suche ließ sich nicht laden. Die Liste unten enthält alle Seiten.";
const forQuestion = (question: string) => question && ` für „${question}“`;
export const nothing = (question: string, narrowed: boolean) =>
  `Nichts gefunden${forQuestion(question)}. ${narrowed ? "Nimm eine Wahl unter „Eingrenzen“ weg." : "Versuche es mit einem einzigen Wort oder dem Namen eines Ions."}`;
/** @param formulas how formulas were understood, each by name and as it is printed */
export const found = (count: number, question: string, formulas: readonly (readonly string[])[]) =>
  `${count} ${count === 1 ? "Seite" : "Seiten"}${forQuestion(question)}${formulas.length > 0 ? `, gelesen als ${formulas.map((ways) => ways.join(" oder ")).join(", ")}` : ""}.`;
export const instead = (question: string, found: string) => `Nichts gefunden für „${question}“. Stattdessen: ${found}`;

/** Substances that pages name by words; the names of ions are in their own table. */
export const SUBSTANCES: Readonly<Record<string, string>> = {
  NaOH: "Natronlauge",
  NH3: "Ammoniak",
  HCl: "Salzsäure",
  HNO3: "Salpetersäure",
  H2SO4: "Schwefelsäure",
  CH3COOH: "Ethansäure",
  KI: "Kaliumiodid",
  KMnO4: "Kaliumpermanganat",
  K2CrO4: "Kaliumchromat",
  K2Cr2O7: "Dichromat",
  KSCN: "Kaliumthiocyanat",
  "K4[Fe(CN)6]": "Kaliumhexacyanidoferrat(II)",
  "K3[Fe(CN)6]": "Kaliumhexacyanidoferrat(III)",
  "Ca(OH)2": "Kalkwasser",
  H2O: "Wasser",
  H2O2: "Wasserstoffperoxid",
  CO2: "Kohlenstoffdioxid",
  SO2: "Schwefeldioxid",
  NO2: "Stickstoffdioxid",
  H2: "Wasserstoff",
  O2: "Sauerstoff",
  Cl2: "Chlor",
  I2: "Iod",
};

/** Other spellings and names, each with the one the pages use. */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/\bkarbonat/g, "carbonat"],
  [/\b(calz|kalz)ium\b/g, "calcium"],
  [/\bkobalt/g, "cobalt"],
  [/jodid/g, "iodid"],
  [/\bjod\b/g, "iod"],
  [/oxyd/g, "oxid"],
  [/\bkohlendioxid\b/g, "kohlenstoffdioxid"],
  [/\bessigsäure\b/g, "ethansäure"],
  [/\bnatriumhydroxid\b/g, "natronlauge"],
  [/(\p{L}) \((i{1,3}|iv|vii?)\)/gu, "$1($2)"],
];

/** Words too common to be asked of a page. */
const FILLERS = new Set(
  "am auf aus bei das dem den der die ein eine einem einen einer für im in ion ionen ist mit nachweis nachweise und von was welche welches wie wird zu zum zur".split(
    " ",
  ),
);

/** A question in lower case, spelt as the pages spell. */
export const ourSpelling = (question: string): string =>
  SPELLINGS.reduce((text, [other, same]) => text.replace(other, same), question);
export const isFiller = (word: string): boolean => FILLERS.has(word);
