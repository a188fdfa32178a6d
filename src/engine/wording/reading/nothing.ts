/** No visible change, and words for it that are none. */
import * as say from "#words/reading.ts";
import { ask, type Reading } from "./reading.ts";

const NONE =
  "(?:no (?:visible |observable |further |apparent |obvious )?changes?(?: seen| observed)?|no visible reaction|nothing(?: happens| happened| seen| visible)?|(?:(?:it|solution|liquid|colour|precipitate|solid) )?(?:stays?|stayed|remains?|remained) (?:the )?(?:same(?: colour)?|unchanged)|no (?:change (?:of|in) colour|colour change)|unchanged|as before)(?: with (?:the )?starch(?: solution)?)?";

export function readNothing(reading: Reading): void {
  const { words, asked, seen } = reading;
  const noPlace = words.take("melts?|melted|crackles?|crackling|decrepitates|swells?(?: up)?|swollen|puffs up");
  if (noPlace) ask(reading, say.noPlace(noPlace));
  const reaction = words.take(
    "no (?:observable )?reaction(?: seen| observed| occurs| takes place)?|(?:does not|doesn't|did not) react",
  );
  const none = words.take(NONE);
  if (reaction) ask(reading, say.NO_REACTION, "sight");
  if (!reaction && !none) {
    if (reading.denied && Object.keys(seen).length === 0) seen.none = true;
    return;
  }
  const { solution, ...others } = seen;
  const nothingElse = Object.keys(others).every((key) => key === "gas" && seen.gas === false);
  // "No visible change (stays purple)": the colour was read as the liquid's.
  const stays = solution === "colourless" ? undefined : solution;
  if (nothingElse && (solution === undefined || stays)) {
    delete seen.solution;
    seen.none = true;
    if (stays) seen.stays = stays;
  } else if (asked.solid && seen.fate === undefined && !seen.precipitate) seen.fate = "remains";
}
