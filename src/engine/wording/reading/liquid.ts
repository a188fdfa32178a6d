/** The colour of the liquid, and colours that are said of nothing. */
import * as say from "#words/reading.ts";
import { sameColour } from "../../practical/same-colour.ts";
import { ask, type Reading } from "./reading.ts";

const LIQUID = "(?:solution|liquid|filtrate)";
const TURNS =
  "turns?|turned|turning|is|was|goes|went|going|becomes?|became|changes?|changed|stays|stayed|remains|remained|colour|,";
export const STAYS = "(?:stays|stayed|remains|remained|persists)";
/** "Purple colour of the manganate(VII) remains". */
export const COLOUR_STAYS = `C(?: colour)?(?: (?:of )?(?:the )?manganate)?(?: ,)? (?:${STAYS}|unchanged)`;

export function readLiquid(reading: Reading): void {
  const { words, seen } = reading;
  const solution =
    words.take(`(?:from )?C to C(?: ${LIQUID})?`) ??
    words.take(COLOUR_STAYS) ??
    words.take(`C(?: coloured)? ${LIQUID}`) ??
    words.take(`${LIQUID}(?: (?:${TURNS}))*(?: from C)?(?: to)? C`) ??
    (seen.fate ? words.take("(?:giving|to give|gives|to|forming|to form|leaving|to leave)(?: a| an)? C") : undefined) ??
    words.take(
      "(?:manganate|purple)(?: colour)?(?: is| was)? (?:decolouri[sz]ed|disappears|lost)|decolouri[sz]e[sd](?: manganate)?",
    ) ??
    words.take(`(?:turns|turned|goes|went|becomes|became|${STAYS})(?: from C)?(?: to)? C`) ??
    (seen.fate === "dissolves" && !words.has("white") ? words.take("C") : undefined);
  const colour = solution && (/decolouri|lost|disappears/.test(solution) ? "colourless" : words.colourIn(solution));
  if (colour) {
    seen.solution = colour;
    const more = words.take(`C(?: coloured)? ${LIQUID}`);
    const other = more && words.colourIn(more);
    if (other && !sameColour(other, colour)) ask(reading, say.ONE_SOLUTION, "one solution");
  }
  if (words.take("clear") && !colour) ask(reading, say.CLEAR, "solution");
  if (Object.keys(seen).length > 0) return;
  const bare = words.take("C");
  const named = bare && words.colourIn(bare);
  if (named) ask(reading, say.ofWhat(named));
}
