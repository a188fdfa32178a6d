/** A colour of the liquid that goes: "purple colour disappears", "brown colour fades", "loses its colour". */
import type { Reading } from "./reading.ts";

const SURELY =
  "(?:(?:is|was|has|had|been|is then|then|completely|slowly|quickly|rapidly|gradually|immediately|soon|,) )*";
const GOES =
  "(?:(?:goes|went|gone|fades|faded)(?: away)?|disappears|disappeared|vanishes|vanished|lost|removed|discharged|destroyed|decolouri[sz]ed)";
/** "Goes green", "fades to yellow" name what is there at the end; "fades slightly" is no end. */
const NO_MORE = "(?! (?:from |to |very |slight |partly |a little )*(?:C|pale|slight|partly|a little))";
/** Whose colour it is: "of the manganate", "of iodine". */
const OF_IT = "(?: of (?:the )?[a-z]+(?: solution| water)?)?";

const GONE = [
  `(?:C )?(?:[a-z]+ )?colour(?:ation)?${OF_IT} ${SURELY}${GOES}${NO_MORE}`,
  `C(?: coloured)?(?: (?:solution|liquid|manganate|iodine|bromine))? ${SURELY}(?:fades|faded|disappears|disappeared|vanishes|vanished|lost|decolouri[sz]ed)${NO_MORE}`,
  "(?:solution |liquid |it )?(?:loses|lost|losing) (?:(?:its|the|all) )*(?:C )?colour(?:ation)?",
  "(?:manganate|iodine|bromine|solution|liquid)(?: (?:solution|water))?(?: is| was| becomes)? (?:decolouri[sz]ed|bleached)|(?:is |was |becomes )?decolouri[sz](?:e[sd]|ing)(?: (?:the )?(?:manganate|iodine|bromine)(?: solution| water)?)?",
] as const;

/** Before what is said of solids, which disappear too. A colour that the liquid is said to have afterwards is read later and stands. */
export function readDecolourised({ words, asked, seen }: Reading): void {
  if (asked.flame || asked.heated) return;
  for (const pattern of GONE) if (words.take(pattern)) seen.solution = "colourless";
}
