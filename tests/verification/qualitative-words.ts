/** The words of the published tables against the engine's names for colours and its evidence for gases. */
import { COLOURS } from "../../src/engine/constants/colours.ts";
import { type Colour, type Observation, sameColour } from "../../src/engine/practical.ts";
import { colourSynonyms, type PublishedObservation } from "./qualitative-rows.ts";

/** True when the published word and ours are the same, or the table or our colour list calls them the same. */
export function colourAgrees(wanted: string | null, seen: Colour): boolean {
  if (wanted === null) return true;
  if (wanted === seen) return true;
  const listed = (word: string) => [word, ...(colourSynonyms[word] ?? [])];
  if (listed(wanted).includes(seen) || listed(seen).includes(wanted)) return true;
  return Object.hasOwn(COLOURS, wanted) && sameColour(wanted as Colour, seen);
}

/**
 * Colours of the liquid at the end that a published text allows: "purple to colourless (very pale yellow)" ends colourless or very pale
 * yellow, "purple stays" purple. Of the look of a solution ("yellow to orange-brown", `range`) both ends are allowed. What is said of an
 * organic layer, or of a ring where two liquids meet, is left out.
 */
export function endColours(published: string, range: boolean): string[] {
  const [first] = published.split(";");
  const ways = first
    .replace(/ (stays|solution)\b/g, "")
    .replace(/^transient .*, then /, "")
    .replace(", unchanged", "")
    .split(/ or |\s*\(|\)/)
    // Our list has no "very pale yellow": its nearest name is "pale yellow".
    .map((word) => word.trim().replace("very pale yellow", "pale yellow"))
    .filter((word) => word !== "" && !word.includes("ring"));
  return ways.flatMap((way) => {
    const ends = way.split(" to ");
    return range ? ends : [ends[ends.length - 1]];
  });
}

export function flameAgrees(wanted: string | null, seen: Colour | false): boolean {
  return seen === false ? wanted === null || wanted.startsWith("no ") : wanted !== null && colourAgrees(wanted, seen);
}

/** In limewater the table calls the sign a white precipitate; whether it clears in excess counts where the table says so. */
export function limewaterAgrees({ colour, solubleInExcess }: PublishedObservation, evidence: string): boolean {
  if (colour !== "white" || !evidence.includes("milky")) return false;
  return solubleInExcess === null || evidence.includes("clear") === solubleInExcess;
}

/** Last word of each published sign of a gas that the engine's evidence must hold. */
export function evidenceAgrees(wanted: PublishedObservation, { gas, fumes }: Observation): boolean {
  if (!gas) return false;
  if (wanted.precipitate) return limewaterAgrees(wanted, gas.evidence);
  return (wanted.resultingColour ?? "").split("; ").every((sign) => {
    if (sign === "brown gas") return fumes === "brown" || fumes === "red-brown";
    if (sign === "white smoke") return true;
    const word = sign.split(" ").at(-1) ?? sign;
    return gas.evidence.includes(word);
  });
}
