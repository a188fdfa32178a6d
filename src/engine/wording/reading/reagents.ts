/** Reagents that a record names beside what they did. They are words of the instruction, even where a gas has the same name. */
import type { Sentence } from "../sentence.ts";

const SORT = "(?:(?:the|more|some|dilute|concentrated|aqueous) )*";
/** What acts on a tube and is also the name of a gas. */
const ALSO_A_GAS = "(?:ammonia|nh3|hydrogen chloride|hcl|chlorine|cl2)";
const ANIONS =
  "nitrate|chloride|bromide|iodide|sul(?:f|ph)ate|sul(?:f|ph)ite|thiosul(?:f|ph)ate|carbonate|chromate|thiocyanate|hexacyanoferrate";
const METALS = "sodium|potassium|ammonium|barium|silver|lead|calcium|magnesium|iron|copper";

const BOTTLES = [
  `${SORT}(?:(?:nitric|hydrochloric|sul(?:f|ph)uric|ethanoic) )?acid`,
  `${SORT}(?:(?:sodium|potassium|calcium|ammonium) )hydroxide`,
  `${SORT}(?:${METALS}) (?:${ANIONS})`,
  `${SORT}hydrogen peroxide`,
  `${SORT}(?:chlorine|bromine|iodine) water`,
  `(?:with )?(?:aluminium|zinc|copper) (?:foil|turnings|metal)`,
  "(?<=[,~] |^ )starch(?: solution)?(?= ,)",
  "(?:hexacyanoferrate|naoh|koh|hno3|h2so4|agno3|bacl2|na2co3|kscn|h2o2)",
] as const;

/** A gas that comes off with something, said as "with ammonia given off". */
const NOT_OFF = "(?! (?:gas|is|was|being|given|evolved|released|produced|formed|formation|escapes))";
const WITH_IT = `(?:with|in|by|adding|added|to|after|excess|more|dilute|aqueous|concentrated|addition of|drops of) ${SORT}${ALSO_A_GAS}(?: solution| water)?${NOT_OFF}|${ALSO_A_GAS} (?:solution|water)`;

/** Takes the reagents out of the sentence; what a gas shows has been read before. */
export function takeReagents(words: Sentence): void {
  for (const pattern of [...BOTTLES, WITH_IT]) while (words.take(pattern) !== undefined);
}

/** Words of a gas or of what shows one. */
const OF_A_GAS =
  "gas(?:es)?|given off|gives off|evolved|released|escapes|effervescence|smell(?:s|ing)?|odour|fumes|vapours?|smoke|litmus|lime ?water|splint|pops?|bleach(?:es|ed)?";

/** True when the sentence speaks of a gas, so that "ammonia" in it is one. */
export const speaksOfGas = (words: Sentence): boolean => words.has(OF_A_GAS);

/** Takes a reagent named for itself where no gas is spoken of: "ammonia: white precipitate". A name that stands alone is a gas. */
export function takeNamesOfReagents(words: Sentence): void {
  if (new RegExp(`^${ALSO_A_GAS}$`).test(words.left())) return;
  while (words.take(ALSO_A_GAS) !== undefined);
}
