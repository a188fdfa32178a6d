/** Precipitates, and what becomes of them. */
import * as say from "#words/reading.ts";
import { type Colour, sameColour } from "../../practical/same-colour.ts";
import type { Fate } from "../../practical.ts";
import { isBetween } from "../colour-names.ts";
import { COLOUR_STAYS, STAYS } from "./liquid.ts";
import { ask, type Reading } from "./reading.ts";

const TEXTURE = "gelatinous|curdy|crystalline|heavy|thick|dense|fine|jelly-like|coloured|milky|cloudy";
const CLOUD = "(?:precipitate|cloudiness|cloud|haze|suspension|turbidity)";
const OF_COLOUR = `(?:(?:${TEXTURE})(?: ,)? )*C(?:(?: ,)? (?:${TEXTURE}))* ${CLOUD}`;
/** "white or cream precipitate", "white/cream precipitate"; in "solution turns blue, white precipitate" the comma parts two things. */
const EITHER = `(?:C (?:or|maybe|perhaps|possibly)|(?<=(?:^|[,~]) )C ,) ${OF_COLOUR}`;
const FAINT =
  "(?:very )?(?:faint|slight|trace of|trace|little|thin|tiny|hardly any|(?:just|barely|hardly) visible)(?: amount of| trace of)?(?: an?)?";

/** Of those words, the ones that say it was at the limit of sight. */
const BARELY = /\b(?:very|trace|tiny|hardly|barely|just)\b/;

export function readSolids(reading: Reading): void {
  const { words, asked, seen } = reading;
  if (words.take("no (?:visible )?(?:C )?(?:precipitate|solid)(?: is| was)?(?: formed| seen)?"))
    seen.precipitate = false;
  const later = readLater(reading);
  readPrecipitate(reading);
  if (later && seen.precipitate) seen.precipitate.colour = later;
  // Where no solid is, "purple stays" and "stays purple" are said of the liquid.
  const colourStays = !asked.solid && !seen.precipitate && words.has(`${COLOUR_STAYS}|${STAYS} C`);
  const ofLiquid = (colourStays && !words.has("white")) || words.has(THE_SAME);
  const fate = ofLiquid ? undefined : fateIn(reading);
  if (fate) seen.fate = fate;
  // "White precipitate insoluble in excess", said of the one that was there, names no new one.
  if (asked.solid && seen.fate && seen.precipitate) delete seen.precipitate;
  // Where no solid was, one that remains has first to form.
  if (asked.solid === false && seen.fate && !seen.precipitate && !reading.missing.includes("colour"))
    ask(reading, say.PRECIPITATE_COLOUR, "colour");
}

const ON_STANDING =
  "(?:turning|turns|darkens?|darkening|goes|browning|browns)(?: slowly| quickly| gradually)?(?: to)?(?: C)? (?:on standing|in air|in light|on contact with air|(?:at|on) the surface)[^~]{0,40}";
const TURNS_INTO =
  "(?<=precipitate(?: (?!solution|liquid|filtrate)[a-z,]+){0,4} )(?:turn(?:s|ed|ing)|goes|went|becomes|became|change[sd]|darken(?:s|ed))(?: (?:slowly|from C|to))* C(?! (?:solution|liquid))";

/**
 * The colour that a precipitate turns to. One that was in the tube has it at the end; of one that forms the first look is kept, and the
 * writer is told so.
 */
function readLater(reading: Reading): Colour | undefined {
  const { words, asked } = reading;
  const standing = words.take(ON_STANDING);
  const turned = standing ? undefined : words.take(TURNS_INTO);
  if (turned && asked.solid) return words.colourIn(turned);
  if (standing ?? turned) ask(reading, say.ON_STANDING);
  return undefined;
}

function readPrecipitate(reading: Reading): void {
  const { words, asked, seen } = reading;
  const either = words.take(EITHER);
  const faint =
    words.take(`${FAINT}(?: (?:${TEXTURE}),?)* C ?(?:${TEXTURE})? ${CLOUD}`) ??
    words.take(`slight (?:cloudy|milky) C|C (?:slight|faint) ${CLOUD}|(?:goes |turns )?slight C (?:cloudy|milky)`);
  const plain =
    faint ??
    either ??
    words.take(OF_COLOUR) ??
    solidIn(reading) ??
    words.take(`(?:cloudy|milky) C(?! (?:solution|liquid|flame|residue|fumes))`) ??
    words.take(
      `precipitate(?: (?:is|was|which|formed|of|colour|,))* C(?: colour)?(?! (?:solution|liquid|filtrate|flame|residue|fumes|gas|when|on))`,
    );
  const colour = plain && words.colourIn(plain);
  if (colour === "colourless") ask(reading, say.COLOURLESS_SOLID, "colour");
  else if (colour) seen.precipitate = { colour, amount: !faint ? "plain" : BARELY.test(faint) ? "trace" : "slight" };
  else if (
    !asked.solid &&
    words.has(`precipitate|cloudy|milky|turbid|cloudiness|haze`) &&
    !words.has(`${DISSOLVES}|${REMAINS}`)
  )
    ask(reading, say.PRECIPITATE_COLOUR, "colour");
  if (plain && colour) onlyOne(reading, plain, colour, either !== undefined);
  words.take(`${FAINT} ${CLOUD}`);
}

/** A solid that is no dry one: one that forms, or the one in the tube, whose colour is not the liquid's. */
function solidIn({ words, asked }: Reading): string | undefined {
  if (asked.heated) return undefined;
  const formed = words.take(`C(?: (?:${TEXTURE}))* solid (?:is |was )?(?:forms?|formed|appears|appeared|seen)`);
  const any = formed ?? words.take(`C(?: (?:${TEXTURE}))* solid`);
  return asked.solid && !formed ? undefined : any;
}

/** Asks for one colour where the precipitate is given two that exclude one another. */
function onlyOne(reading: Reading, plain: string, colour: Colour, either: boolean): void {
  const { words } = reading;
  const colours = [colour];
  for (let more = words.take(OF_COLOUR); more; more = words.take(OF_COLOUR)) {
    const other = words.colourIn(more);
    if (other) colours.push(other);
  }
  const first = either ? words.colourIn(plain.slice(0, plain.indexOf("›") + 1)) : undefined;
  if (first) colours.push(first);
  const between = plain.match(/‹[^›]+›/g)?.some((written) => isBetween(written.slice(1, -1)));
  if (between || colours.some((one) => !sameColour(one, colour))) ask(reading, say.ONE_PRECIPITATE, "one precipitate");
}

const IT = "(?:it |this |the )?(?:precipitate |solid |cloudiness |residue )?";
/** "Solution stays blue" is said of the liquid. */
const NOT_LIQUID = "(?<!(?:solution|liquid|filtrate) )";
const DISSOLVE = "(?:re-?)?dissol(?:ve[sd]?|ving)";
const PARTLY = `(?:partly|partially|partial|slight|sparingly|mostly|nearly|almost) (?:${DISSOLVE}|soluble|clears)|some of (?:it|the (?:precipitate|solid)) ${DISSOLVE}|some ${DISSOLVE}|(?:a little|some) (?:of it )?dissolves|dissolves (?:a little|partly|partially|slight)`;
const REMAINS = `insoluble|(?:it |precipitate |solid )?(?:does not|doesn't|doesnt|did not|didn't|will not|won't|not) (?:${DISSOLVE}|re-?dissolve|soluble|dissolve)|${IT}${NOT_LIQUID}(?:remains|remained|stays|stayed|persists|is left|still there|is still there)|no (?:visible |further )?change in excess|unchanged in excess`;
/** Said of what did not change, not of a solid that stayed. */
const THE_SAME = "(?:stays?|stayed|remains?|remained) (?:the )?(?:same|unchanged)";
const DISSOLVES = `${IT}(?:${DISSOLVE}|(?:readily |completely |fully )?soluble|disappear(?:s|ed)|clears)`;

function fateIn(reading: Reading): Fate | undefined {
  const { words, asked } = reading;
  const fate: Fate | undefined = words.take(PARTLY)
    ? "partly dissolves"
    : words.take(REMAINS)
      ? "remains"
      : words.take(DISSOLVES)
        ? "dissolves"
        : undefined;
  if (fate === "remains" && words.has(DISSOLVES)) ask(reading, say.ONE_FATE, "one fate");
  if (fate || asked.solid) words.take("(?:precipitate|solid)");
  return fate;
}
