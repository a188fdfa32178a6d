/** A colour of the liquid that goes: "purple colour disappears", "brown colour fades", "loses its colour". */
import type { Reading } from "./reading.ts";

const GONE = [
  // Not "goes green" or "fades to yellow", which name what is there at the end, nor "fades slightly", which is no end.
  "(?:(?:C )?(?:[a-z]+ )?colour(?: of (?:the )?[a-z]+)?|(?!white)C(?: (?:solution|liquid|manganate|iodine))?)(?: (?:is|was|has|been|then|slowly|quickly|completely|,))* (?:goes|went|gone|fade[sd]|disappear(?:s|ed)|vanishe[sd]|lost|removed|discharged|decolouri[sz]ed)(?: away)?(?! (?:(?:from|to|very|a) )*(?:C|slight|partly|little|pale))",
  "(?:loses|lost|losing) (?:(?:its|the|all) )*(?:C )?colour",
  "(?:manganate |iodine |bromine )?(?:is |was )?decolouri[sz](?:e[sd]|ing)(?: manganate| iodine| bromine)?",
] as const;

/** Before what is said of solids, which disappear too. A colour that the liquid is said to have afterwards is read later and stands. */
export function readDecolourised({ words, asked, seen }: Reading): void {
  if (asked.flame || asked.heated) return;
  for (const pattern of GONE) if (words.take(pattern)) seen.solution = "colourless";
}
