/** Precipitates, and what becomes of them. */
import * as say from "#words/reading.ts";
import type { Fate } from "../../practical.ts";
import { ask, type Reading } from "./reading.ts";

const TEXTURE = "gelatinous|curdy|crystalline|heavy|thick|dense|fine|jelly-like|coloured|milky|cloudy";
const CLOUD = "(?:precipitate|cloudiness|cloud|haze|suspension|turbidity)";
const FAINT =
  "(?:very )?(?:faint|slight|trace of|trace|little|thin|tiny|hardly any|just visible)(?: amount of| trace of)?(?: an?)?";

export function readSolids(reading: Reading): void {
  const { words, asked, seen } = reading;
  if (words.take("no (?:visible )?(?:C )?(?:precipitate|solid)(?: is| was)?(?: formed| seen)?"))
    seen.precipitate = false;
  const turning = words.take(
    "(?:turning|turns|darkens?|darkening|goes|browning|browns)(?: slowly| quickly| gradually)?(?: to)?(?: C)? (?:on standing|in air|in light|on contact with air|(?:at|on) the surface)[^~]{0,40}|(?<=precipitate )turning C",
  );
  if (turning) ask(reading, say.ON_STANDING);
  readPrecipitate(reading);
  // "Purple stays" is said of the liquid.
  const ofLiquid = !asked.solid && !seen.precipitate && words.has("C (?:stays|remains)");
  const fate = ofLiquid ? undefined : fateIn(reading);
  if (fate) seen.fate = fate;
  // "White precipitate insoluble in excess", said of the one that was there, names no new one.
  if (asked.solid && seen.fate && seen.precipitate) delete seen.precipitate;
}

function readPrecipitate(reading: Reading): void {
  const { words, asked, seen } = reading;
  const faint =
    words.take(`${FAINT}(?: (?:${TEXTURE}),?)* C ?(?:${TEXTURE})? ${CLOUD}`) ??
    words.take(`slight (?:cloudy|milky) C|C (?:slight|faint) ${CLOUD}|(?:goes |turns )?slight C (?:cloudy|milky)`);
  const plain =
    faint ??
    words.take(`(?:(?:${TEXTURE})(?: ,)? )*C(?:(?: ,)? (?:${TEXTURE}))* ${CLOUD}`) ??
    words.take(`(?:cloudy|milky) C(?! (?:solution|liquid|flame|residue|fumes))`) ??
    words.take(
      `precipitate(?: (?:is|was|which|formed|of|colour|,))* C(?: colour)?(?! (?:solution|liquid|filtrate|flame|residue|fumes|gas|when|on))`,
    );
  const colour = plain && words.colourIn(plain);
  if (colour === "colourless") ask(reading, say.COLOURLESS_SOLID, "colour");
  else if (colour) seen.precipitate = { colour, amount: faint ? "slight" : "plain" };
  else if (
    !asked.solid &&
    words.has(`precipitate|cloudy|milky|turbid|cloudiness|haze`) &&
    !words.has(`${DISSOLVES}|${REMAINS}`)
  )
    ask(reading, say.PRECIPITATE_COLOUR, "colour");
  words.take(`${FAINT} ${CLOUD}`);
}

const IT = "(?:it |this |the )?(?:precipitate |solid |cloudiness |residue )?";
const DISSOLVE = "(?:re-?)?dissol(?:ve[sd]?|ving)";
const PARTLY = `(?:partly|partially|partial|slight|sparingly|mostly|nearly|almost) (?:${DISSOLVE}|soluble|clears)|some of (?:it|the (?:precipitate|solid)) ${DISSOLVE}|some ${DISSOLVE}|(?:a little|some) (?:of it )?dissolves|dissolves (?:a little|partly|partially|slight)`;
const REMAINS = `insoluble|(?:it |precipitate |solid )?(?:does not|doesn't|doesnt|did not|didn't|will not|won't|not) (?:${DISSOLVE}|re-?dissolve|soluble|dissolve)|${IT}(?:remains|remained|stays|stayed|persists|is left|still there|is still there)|no (?:visible |further )?change in excess|unchanged in excess`;
const DISSOLVES = `${IT}(?:${DISSOLVE}|(?:readily |completely |fully )?soluble|disappear(?:s|ed)|clears)`;

function fateIn({ words, asked }: Reading): Fate | undefined {
  const fate: Fate | undefined = words.take(PARTLY)
    ? "partly dissolves"
    : words.take(REMAINS)
      ? "remains"
      : words.take(DISSOLVES)
        ? "dissolves"
        : undefined;
  if (fate || asked.solid) words.take("(?:precipitate|solid)");
  return fate;
}
