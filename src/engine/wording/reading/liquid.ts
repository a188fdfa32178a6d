/** The colour of the liquid, and colours that are said of nothing. */
import * as say from "#words/reading.ts";
import { sameColour } from "../../practical/same-colour.ts";
import { ask, type Reading } from "./reading.ts";

const LIQUID = "(?:solution|liquid|filtrate)";
const BECOMES = "turns?|turned|turning|goes|went|going|becomes?|became|changes?|changed|fade[sd]|to";
const TURNS = `${BECOMES}|is|was|stays|stayed|remains|remained|colour|,`;
/** "Orange solution turns green", "purple fades to colourless": the colour it had is no part of what is seen at the end. */
const X_TO_Y = `(?:from )?C(?: coloured)?(?: (?:colour|${LIQUID}))?(?: (?:then|slowly|quickly|gradually|,))*(?: (?:${BECOMES}))+(?: (?:from C|a|slowly|quickly))* C(?: ${LIQUID})?(?! precipitate)`;
/** Starch colours the liquid, even where "solution" is not written. */
const WITH_STARCH = `C(?: colour)? with starch(?: solution)?|(?:with )?starch(?: solution)?(?: (?:${BECOMES}|gives|an?|,))* C(?! precipitate)`;
export const STAYS = "(?:stays|stayed|remains|remained|persists)";
/** "Purple colour of the manganate(VII) remains". */
export const COLOUR_STAYS = `C(?: colour)?(?: (?:of )?(?:the )?manganate)?(?: ,)? (?:${STAYS}|unchanged)`;

export function readLiquid(reading: Reading): void {
  const { words, seen } = reading;
  const solution =
    words.take(WITH_STARCH) ??
    words.take(X_TO_Y) ??
    words.take(COLOUR_STAYS) ??
    words.take(`C(?: coloured)? ${LIQUID}`) ??
    words.take(`${LIQUID}(?: (?:${TURNS}))*(?: from C)?(?: to)? C`) ??
    (seen.fate ? words.take("(?:giving|to give|gives|to|forming|to form|leaving|to leave)(?: a| an)? C") : undefined) ??
    words.take(`(?:${BECOMES}|${STAYS})(?: from C)?(?: to)? C`) ??
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
