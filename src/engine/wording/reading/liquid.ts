/** The colour of the liquid, and colours that are said of nothing. */
import * as say from "#words/reading.ts";
import { sameColour } from "../../practical/same-colour.ts";
import { ask, type Reading } from "./reading.ts";

const LIQUID = "(?:solution|liquid|filtrate)";
const TURNS =
  "turns?|turned|turning|is|was|goes|went|going|becomes?|became|changes?|changed|stays|stayed|remains|remained|colour|,";
/** "Orange solution turns green": the colour it had is no part of what is seen at the end. */
const BECOMES =
  "(?:(?:then|slowly|quickly|gradually|immediately|rapidly|,) )*(?:turns?|turned|turning|goes|went|going|becomes?|became|changes?|changed|fades|faded|to)(?: (?:slowly|quickly|gradually|from|C|to|a|very|more))*";
const FADES_TO = "(?:fades|faded|changes|changed|turns|turned|goes|went) (?:(?:slowly|quickly|gradually) )*to";
/** Starch colours the liquid, even where "solution" is not written. */
const WITH_STARCH = "C(?: (?:colour|colouration))? (?:with|in|on adding) (?:the )?starch(?: solution)?";
const THEN = "(?: ,)?(?:(?: (?:and|,))* then(?: (?:to|turns|goes|becomes))* C)*";
export const STAYS = "(?:stays|stayed|remains|remained|persists)";
/** "Purple colour of the manganate(VII) remains". */
export const COLOUR_STAYS = `C(?: colour)?(?: (?:of )?(?:the )?manganate)?(?: ,)? (?:${STAYS}|unchanged)`;

export function readLiquid(reading: Reading): void {
  const { words, seen } = reading;
  const solution =
    words.take(WITH_STARCH) ??
    words.take(`C(?: coloured)? ${LIQUID} ${BECOMES} C${THEN}`) ??
    words.take(`C(?: colour)? ${FADES_TO} C${THEN}(?! precipitate)`) ??
    words.take(`(?:from )?C to C(?: ${LIQUID})?${THEN}`) ??
    words.take(COLOUR_STAYS) ??
    words.take(`C(?: coloured)? ${LIQUID}`) ??
    words.take(`${LIQUID}(?: (?:${TURNS}))*(?: from C)?(?: to)? C${THEN}`) ??
    (seen.fate ? words.take("(?:giving|to give|gives|to|forming|to form|leaving|to leave)(?: a| an)? C") : undefined) ??
    words.take(`(?:turns|turned|goes|went|becomes|became|fades|faded|${STAYS})(?: from C)?(?: to)? C${THEN}`) ??
    (seen.fate === "dissolves" && !words.has("white") ? words.take("C") : undefined);
  const colour = solution && words.colourIn(solution);
  if (colour) {
    seen.solution = colour;
    const more = words.take(`C(?: coloured)? ${LIQUID}`) ?? words.take(`${LIQUID}(?: (?:${TURNS}))* C`);
    const other = more && words.colourIn(more);
    if (other && !sameColour(other, colour)) ask(reading, say.ONE_SOLUTION, "one solution");
  }
  if (words.take("clear") && !colour) ask(reading, say.CLEAR, "solution");
  if (Object.keys(seen).length > 0) return;
  const bare = words.take("C");
  const named = bare && words.colourIn(bare);
  if (named) ask(reading, say.ofWhat(named));
}
