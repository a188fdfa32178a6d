/**
 * Words beside the reagents that a clause names: "bromine" in "bromine water", "ethanol" in "NaOH and 1 cm3 of ethanol". A name that stands
 * inside another one, and a thing that no bottle of the bench holds, are asked about and never poured as something else.
 */
import { type FoundReagent, nameOfReagent } from "./reagent-names.ts";

/** How a reagent is made up or added: words that name nothing. */
const MADE_UP =
  /^(?:aqueous|dilute|diluted|concentrated|fresh|clean|cold|cool|hot|warm|distilled|deionised|pure|solid|granulated|small|short|thin|large|equal|same|little|more|further|another|additional|extra|some|few|several|enough|sufficient|plenty|plain|excess|slight|single|about|approximately|roughly|made|prepared|bench|laboratory|reagent|well|[a-z]+ly)$/;
/** Articles, figures and units. */
const MEASURE =
  /^(?:a|an|the|of|each|your|any|cm3|cm|ml|cc|g|mg|drops?|pieces?|strips?|granules?|squares?|measures?|spatula|portions?|volumes?|amounts?|quantity|depth|deep|molar|mol|m|dm-3|mol\/dm3|mol\/l|l-1|one|two|three|four|five|six|seven|eight|nine|ten|half|[a-z]\d?|\W*\d.*)$/;
/** After these no reagent is named any more. */
const STOP =
  /^(?:add|acidify|neutrali[sz]e|treat|pour|mix|shake|stir|swirl|warm|heat|boil|this|that|it|them|its|to|in|into|on|at|by|and|or|plus|with|then|followed|for|from|until|as|is|if|using|both|first|also|again|drop|dropwise|time|solutions?|samples?|salts?|tubes?|mixture|filtrate|residue|precipitate|liquid|contents?|care|not|do|but|test|without|[a-z]+ing|~.*)$/;
const endsName = (word: string): boolean => MEASURE.test(word) || STOP.test(word);

/** What follows a name and makes another substance of it: "zinc nitrate", "potassium iodide paper". */
const ANOTHER =
  /^ (?:[a-z]{3,}(?:ate|ite|ide)|water|paper|pellets?|vapour|gas|alloy|powder|dust|filings|turnings|wire|wool)(?![a-z])/;
/** A strength other than in mol/dm3. */
const PERCENT = /(\d+(?:\.\d+)?) ?(%|per ?cent|vols?\b(?! of)|volumes?\b(?! of))/;

const wordsIn = (text: string): string[] =>
  text
    .split(/[\s,;:]+/)
    .map((word) => word.replace(/^[("'[]+|[)"'\].]+$/g, ""))
    .filter((word) => word !== "");

/**
 * The words in which the name of a reagent stands where they make another substance of it, or one of a strength that the bench has not.
 * `text`: the clause; `before`: where the reagent before it ends.
 */
export function strangeName(text: string, { from, to, id }: FoundReagent, before: number): string | undefined {
  const ahead = text.slice(before, from);
  const name = text.slice(from, to);
  const strength = PERCENT.exec(ahead) ?? PERCENT.exec(/^[^~,]{0,12}/.exec(text.slice(to))?.[0] ?? "");
  if (strength && !nameOfReagent(id).includes(`${strength[1]} ${strength[2].slice(0, 3)}`))
    return `${strength[0].trim()} ${name}`;
  const beside: string[] = [];
  for (const word of wordsIn(ahead.replace(/^.*[,;:]/, "")).reverse()) {
    if (endsName(word)) break;
    beside.unshift(word);
  }
  while (beside.length > 0 && MADE_UP.test(beside[0])) beside.shift();
  const another = ANOTHER.exec(text.slice(to))?.[0] ?? "";
  return beside.length > 0 || another ? `${[...beside, name].join(" ")}${another}` : undefined;
}

/** Things that stand beside reagents, joined by "and" and the like, without being one of the bench. */
export function strangersIn(text: string, found: readonly FoundReagent[]): string[] {
  let masked = text;
  for (const { from, to } of found) masked = masked.slice(0, from) + "~".repeat(to - from) + masked.slice(to);
  return masked.split(/,|\b(?:and|or|plus|then|followed by)\b/).flatMap((piece) => {
    if (piece.includes("~")) return [];
    const words = wordsIn(piece.replace(/^ ?(?:add|acidify|treat|pour|mix)\b/, ""));
    const at = words.findIndex((word) => !MADE_UP.test(word) && !MEASURE.test(word));
    if (at < 0 || STOP.test(words[at])) return [];
    const end = words.findIndex((word, index) => index > at && endsName(word));
    return [words.slice(at, end < 0 ? undefined : end).join(" ")];
  });
}
