/** Reagents that a record names beside what they did. They are words of the instruction, even where a gas has the same name. */
import type { Sentence } from "../sentence.ts";

const BOTTLE =
  "(?:[a-z]+ic )?acid|(?:sodium|potassium|ammonium|barium|silver|lead|calcium|magnesium|iron|copper) (?!manganate|dichromate)[a-z]+(?:ate|ide|ite)|" +
  "hydrogen peroxide|(?:chlorine|bromine|iodine) water|(?:aluminium|zinc|copper) (?:foil|metal)|hexacyanoferrate|naoh|hno3|h2so4|agno3|bacl2|h2o2|(?<=[,~] |^ )starch(?= ,)(?! , C(?! precipitate))";
/** What acts on a tube and is also the name of a gas. */
const ALSO_A_GAS = "(?:ammonia|nh3|hydrogen chloride|hcl|chlorine|cl2)";
/** "With ammonia", but a gas that comes off with something is said as "with ammonia given off". */
const WITH_IT = `(?:with|in|by|adding|added|to|after|excess|more|dilute|aqueous|concentrated) (?:the )?${ALSO_A_GAS}(?: solution| water)?(?! (?:gas|is|was|given|evolved|released|formed))|${ALSO_A_GAS} solution`;

/** Words of a gas or of what shows one. */
const OF_A_GAS = "gas|off|evolved|released|effervescence|smells?|fumes|vapours?|smoke|litmus";

/** True when the sentence speaks of a gas, so that "ammonia" in it is one. */
export const speaksOfGas = (words: Sentence): boolean => words.has(OF_A_GAS);

/**
 * Takes the reagents out of the sentence, once what shows a gas has been read.
 * @param ofGas a gas is spoken of; where none is, a name that does not stand alone is a reagent: "ammonia: white precipitate"
 */
export function takeReagents(words: Sentence, ofGas: boolean): void {
  const isAlone = new RegExp(`^${ALSO_A_GAS}$`).test(words.left());
  for (const pattern of [BOTTLE, WITH_IT, ...(ofGas || isAlone ? [] : [ALSO_A_GAS])])
    while (words.take(pattern) !== undefined);
}
