/** Reagents as papers call them: the names and formulas of the bench list, and other words for the same bottle. */
import { reagents } from "../../constants/reagents.ts";

/** Other names, in lower case; without "aqueous", "dilute" and the like. Common practice, no source. */
const ALSO: Readonly<Record<string, readonly string[]>> = {
  "NaOH(aq)": ["caustic soda", "soda lye"],
  "NH3(aq)": ["ammonia", "ammonia water", "ammonium hydroxide", "nh4oh"],
  "CH3COOH(aq)": ["acetic acid", "ch3co2h"],
  "K2CrO4(aq)": ["potassium chromate"],
  "KSCN(aq)": ["ammonium thiocyanate"],
  "K4[Fe(CN)6](aq)": ["potassium ferrocyanide"],
  "K3[Fe(CN)6](aq)": ["potassium ferricyanide"],
  "FeSO4(aq)": ["iron(ii) sulfate", "ferrous sulfate"],
  "Na2SO3(aq)": ["sodium sulfite"],
  "KMnO4(aq)": ["potassium permanganate"],
  "acidified KMnO4(aq)": ["acidified potassium permanganate", "acidified manganate(vii)"],
  "acidified K2Cr2O7(aq)": ["acidified potassium dichromate", "potassium dichromate(vi)", "potassium dichromate"],
  "acidified H2O2(aq)": ["acidified hydrogen peroxide"],
  "H2O2(aq)": ["hydrogen peroxide"],
  "Cl2(aq)": ["chlorine"],
  "I2(aq)": ["iodine solution", "iodine", "i2"],
  "Ca(OH)2(aq)": ["calcium hydroxide", "lime water"],
  "starch solution": ["starch"],
  "Al(s)": ["aluminium"],
  "Zn(s)": ["zinc granules", "zinc metal", "zinc"],
  "H2O(l)": ["distilled water", "deionised water", "deionized water", "water"],
};

/** Names of a kind that could be several bottles, with the question they raise. */
export const KINDS: readonly (readonly [word: string, question: string])[] = [
  ["alkali", "Which alkali?"],
  ["acid", "Which acid?"],
  ["carbonate", "Which carbonate?"],
  ["hexacyanoferrate", "Which hexacyanoferrate: (II) or (III)?"],
  ["indicator", "Which indicator?"],
];

/** What a name is called without its way of being made up: "aqueous", "freshly made aqueous", "dilute". */
const bare = (name: string) => name.replace(/^(?:freshly made )?(?:aqueous|dilute) /, "").replace(/,.*$/, "");

const literal = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
const NUMBER = /\(([iv]+)\)/g;
/**
 * An oxidation number may be left out where one bottle alone has the name without it; another number is another bottle. Sulfur may be spelt
 * with ph (the text has been given the f).
 */
const pattern = (name: string, isShared: boolean) =>
  literal(name).replace(/\\\(([iv]+)\\\)/g, isShared ? " ?\\($1\\)" : " ?(?:\\($1\\)|(?!\\s?\\([iv]+\\)))");

/** Papers are tested and held, not added; what no bottle holds is no reagent of a step. */
const poured = reagents.filter(({ kind, id }) => kind !== "paper" && id !== "universal indicator" && id !== "CuSO4(s)");

const NAMED: readonly { name: string; id: string }[] = poured.flatMap(({ id, name, formula }) => {
  const names = [bare(name.toLowerCase()), ...(ALSO[id] ?? [])];
  const own = id.startsWith("acidified") || !formula ? [] : [formula.toLowerCase().replace(/\^/g, "")];
  return [...names, ...own].map((one) => ({ name: one, id }));
});
/** "Potassium hexacyanoferrate" is the name of two bottles. */
const isShared = (name: string, id: string): boolean =>
  NAMED.some((other) => other.id !== id && other.name.replace(NUMBER, "") === name.replace(NUMBER, ""));

/** By pattern, the longest name first, so that "ammonium chloride" is not read as "ammonia". */
const NAMES: readonly { find: RegExp; id: string }[] = NAMED.toSorted((a, b) => b.name.length - a.name.length).map(
  ({ name, id }) => ({
    find: new RegExp(`(?<![\\w[])${pattern(name, isShared(name, id))}(?:\\(aq\\)|\\(s\\))?(?![\\w])`),
    id,
  }),
);

export interface FoundReagent {
  id: string;
  /** Where its name begins and ends in the text. */
  from: number;
  to: number;
}

/** The reagents a clause names, in the order in which they stand. `text`: in lower case, with f in sulfur. */
export function reagentsIn(text: string): FoundReagent[] {
  const found: FoundReagent[] = [];
  let left = text;
  for (const { find, id } of NAMES) {
    for (let match = find.exec(left); match; match = find.exec(left)) {
      const { index, 0: words } = match;
      found.push({ id, from: index, to: index + words.length });
      left = left.slice(0, index) + "~".repeat(words.length) + left.slice(index + words.length);
    }
  }
  return found.sort((a, b) => a.from - b.from);
}

/** The name under which a reagent stands on the shelf. */
export const nameOfReagent = (id: string): string => reagents.find((one) => one.id === id)?.name ?? id;
