/** Flames, residues, sublimates, drops and indicators. */
import * as say from "#words/reading.ts";
import { type Colour, sameColour } from "../../practical/same-colour.ts";
import { ask, type Reading } from "./reading.ts";

export function readDry(reading: Reading): void {
  readFlame(reading);
  readIndicator(reading);
  readSublimate(reading);
  readResidue(reading);
}

function readFlame(reading: Reading): void {
  const { words, asked, seen } = reading;
  if (
    words.take(
      "no (?:flame colour|colour (?:in|to) the flame|coloured flame|flame)|flame (?:is |was )?(?:not coloured|unchanged)|no (?:useful )?colour(?! change)",
    )
  ) {
    seen.flame = false;
    return;
  }
  const flame =
    words.take("C(?: coloured)? flame") ??
    words.take("flame(?: (?:is|was|turns|turned|goes|went|of|colour|coloured|burns|burned|,))* C") ??
    (asked.flame ? words.take("C") : undefined);
  if (flame) {
    const colour = words.colourIn(flame);
    seen.flame = colour;
    const more = words.take(asked.flame ? "C(?: coloured)?(?: flame)?(?! glass)" : "C(?: coloured)? flame");
    const other = more && words.colourIn(more);
    if (other && colour && !sameColour(other, colour)) ask(reading, say.ONE_FLAME, "one flame");
  }
  if (asked.flame && seen.flame === undefined && words.take("no (?:visible )?change|nothing(?: seen)?|nvc"))
    seen.flame = false;
}

function readIndicator({ words, asked, seen }: Reading): void {
  const tried =
    words.take(
      "(?:universal )?(?:indicator|litmus)(?: paper)?(?: (?:turns?|turned|turning|goes|going|went|becomes?|became|changes?|changed|to|from|is|was|paper)(?![a-z]))* C",
    ) ?? (asked.indicator ? words.take("C") : undefined);
  if (!tried) return;
  seen.indicator = words.colourIn(tried.replace(/^.*(?:litmus|indicator)/, ""));
  // The figure is read off the same colour, on the chart.
  words.take("ph(?: [a-z,]+){0,2} [0-9]+(?:(?: to |-)[0-9]+)?");
}

const WALL = "on (?:the )?(?:cool|cold|cooler|upper)(?:er)?(?: (?:wall|walls|part|parts|sides?|glass)[^~,]{0,30})?";

function readSublimate({ words, seen }: Reading): void {
  const solid =
    words.take(
      `C sublimate(?: ${WALL})?|C (?:solid|ring|crystals|deposit|powder)(?: (?:is|are|forms?|formed|collects))? ${WALL}`,
    ) ?? words.take("sublimate(?: is| was)? C");
  if (solid) seen.sublimate = words.colourIn(solid);
  if (
    words.take(
      `(?:colourless )?(?:drops|droplets|condensation|moisture)(?: of (?:a )?(?:colourless )?(?:liquid|water))?(?: (?:is|are|forms?|formed|collects?))?(?: ${WALL})|(?:colourless )?(?:droplets|condensation|condensate|drops of (?:a )?(?:colourless )?(?:liquid|water)|water drops)`,
    )
  ) {
    seen.droplets = true;
  }
}

const SOLID = "(?:residue|solid|powder|melt)";
/** Said of a residue beside its colour; a record has no place for it. */
const SWOLLEN = "(?: ,)? (?:and )?(?:swollen|swelling|puffed up)";
const NOTHING_LEFT =
  "no (?:residue|solid)(?: is| was)?(?: left)?(?: behind)?|nothing (?:is |was )?left(?: behind)?|(?:all )?disappears completely";

function readResidue(reading: Reading): void {
  const { words, asked, seen } = reading;
  if (words.take(NOTHING_LEFT)) {
    if (asked.heated !== false || !asked.solid) seen.residue = false;
    return;
  }
  const hot =
    words.take(`(?:C (?:to|then) )?C(?: ${SOLID})?(?:${SWOLLEN})?(?: ,)?(?: (?:when|while|if))? hot`) ??
    words.take(`(?:when |while )?hot (?:,|is|it is)? ?C(?: ${SOLID})?`);
  const cold =
    words.take(`C(?: ${SOLID})?(?: (?:when|on|once|if))? (?:cold|cool|cooled|cooling)`) ??
    words.take(`(?:when |on )?(?:cold|cooling) (?:,|is|it is)? ?C(?: ${SOLID})?`);
  const plain = words.take("C (?:residue|powder left|solid left)") ?? words.take("residue(?: is| was| ,)? C");
  if (hot || cold || plain) {
    const at = (text: string | undefined): Colour | undefined => (text ? words.colourIn(text) : undefined);
    const [whileHot, whenCold] = [at(hot), at(cold ?? plain)];
    seen.residue = { ...(whileHot && { hot: whileHot }), ...(whenCold && { cold: whenCold }) };
    words.take("residue");
  } else if (asked.heated) {
    const bare = words.take(`(?:turns |goes |becomes )?(?:from C )?(?:to )?C(?: ${SOLID})?(?! precipitate)`);
    const colour = bare && words.colourIn(bare);
    if (colour) seen.residue = { cold: colour };
  }
  if (!seen.residue || !asked.heated) return;
  if (seen.residue.hot === undefined) ask(reading, say.HOT, "hot");
  if (seen.residue.cold === undefined) ask(reading, say.COLD, "cold");
}
