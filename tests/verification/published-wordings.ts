/**
 * The words of the published tables, read as if somebody had written them on a record sheet, against what the same rows say as data. A
 * wording is a line put together of a row's fields as the boards print it ("white precipitate, soluble in excess, giving a colourless
 * solution"), or words that stand in one field as they are ("purple to colourless", "fizzing; gas turns limewater milky").
 */
import { COLOURS } from "../../src/engine/constants/colours.ts";
import type { Colour, Observation } from "../../src/engine/practical.ts";
import { type AskedOf, readWords } from "../../src/engine/wording/read-words.ts";
import { type Comparison, comparison } from "./comparison.ts";
import { coloursIn } from "./heat-words.ts";
import { type PublishedObservation, type PublishedRow, publishedRows } from "./qualitative-rows.ts";
import { colourAgrees, endColours } from "./qualitative-words.ts";
import { reference } from "./reference.ts";

/** What a row's data say of a wording; a colour is one of several words where the row allows several. */
interface Meaning {
  none?: true;
  precipitate?: false | { colour: string; slight: boolean };
  fate?: Observation["fate"];
  solution?: string[];
  gas?: string;
  flame?: false | string;
  residue?: false | { hot: string[]; cold: string[] };
  sublimate?: string[];
  fumes?: string[];
}

export interface PublishedWording {
  id: string;
  text: string;
  asked: AskedOf;
  means: Meaning;
  /** Colours for which a mark scheme credits this wording: the row's own, where the wording is another one for the same sight. */
  standsFor?: readonly string[];
}

/** A line of two sights of which one is seen: nobody records both, so it is no line of a record. */
const isChoice = ({ text }: PublishedWording): boolean => / or (?!in )/.test(text);

/** Every wording of every row, with those that a mark scheme or another board would also credit. */
export function publishedWordings(): PublishedWording[] {
  const all = publishedRows.flatMap((row) => {
    const others = (row.alsoAccept ?? []).flatMap((other) => {
      const own = [other.colour && row.observation.colour, other.resultingColour && row.observation.resultingColour];
      const standsFor = own.filter((colour) => typeof colour === "string");
      return wordingsOf(row, { ...row.observation, ...other }).map((wording) => ({ ...wording, standsFor }));
    });
    return [...others, ...wordingsOf(row, row.observation)];
  });
  return [...new Map(all.map((one) => [`${one.id} ${one.text}`, one])).values()];
}

function wordingsOf(row: PublishedRow, seen: PublishedObservation): PublishedWording[] {
  switch (row.section) {
    case "gas":
      return gasWordings(row, seen);
    case "flame":
      return flameWordings(row, seen);
    case "heat":
      return [...heatWordings(row, seen), ...noteWordings(row)];
    case "appearance":
      return (seen.resultingColour ?? "")
        .split(" or ")
        .map((colour) => one(row, `${colour} solution`, { solution: endColours(colour, true) }));
    default:
      return [...tubeWordings(row, seen), ...noteWordings(row)];
  }
}

const one = ({ id }: PublishedRow, text: string, means: Meaning, asked: AskedOf = {}): PublishedWording => ({
  id,
  text,
  asked,
  means,
});

/** "No visible change" where the notes say so; otherwise the solid with its fate, and the words for what is there at the end. */
function tubeWordings(row: PublishedRow, seen: PublishedObservation): PublishedWording[] {
  const { precipitate, colour, solubleInExcess, gas, notes } = seen;
  const end = seen.resultingColour ?? "";
  const wordings: PublishedWording[] = [];
  if (notes?.includes("no visible change")) wordings.push(one(row, "no visible change", { none: true }));
  else if (precipitate === false && gas === null && end === "")
    wordings.push(one(row, "no precipitate", { precipitate: false }));
  const liquid = end !== "" && !/precipitate|ring|layer| for /.test(end);
  if (precipitate && colour) {
    for (const each of colour.split(" / ")) {
      const solid = { colour: each, slight: precipitate === "slight" };
      const line = `${solid.slight ? "slight " : ""}${each} precipitate`;
      if (solubleInExcess === true && liquid)
        wordings.push(
          one(row, `${line}, soluble in excess, giving a ${end} solution`, {
            precipitate: solid,
            fate: "dissolves",
            solution: endColours(end, false),
          }),
        );
      else if (solubleInExcess === true)
        wordings.push(one(row, `${line}, soluble in excess`, { precipitate: solid, fate: "dissolves" }));
      else if (solubleInExcess === false)
        wordings.push(one(row, `${line}, insoluble in excess`, { precipitate: solid, fate: "remains" }));
      else if (solubleInExcess === "partially")
        wordings.push(one(row, `${line}, partially soluble`, { precipitate: solid, fate: "partly dissolves" }));
      else wordings.push(one(row, line, { precipitate: solid }));
      if (end.startsWith(`${colour} precipitate`) || /slight|faint/.test(end))
        wordings.push(one(row, end, { precipitate: solid, fate: "remains" }));
    }
  }
  if (liquid && !(precipitate && solubleInExcess === true))
    wordings.push(
      one(row, / to |stays|,/.test(end) ? end : `${end} solution`, {
        solution: endColours(end, false),
      }),
    );
  return wordings;
}

function gasWordings(row: PublishedRow, seen: PublishedObservation): PublishedWording[] {
  const gas = seen.gas ?? "";
  const ways = row.reagent.split("; ");
  const signs = seen.precipitate ? [`${seen.colour} precipitate`] : (seen.resultingColour?.split("; ") ?? []);
  const told = signs.map((sign, index) => {
    if (sign.endsWith(" gas")) return one(row, sign, { fumes: coloursIn(sign) });
    if (sign.includes("litmus")) return one(row, sign, { gas }, { gasTest: "damp blue litmus" });
    return one(row, `${ways[index] ?? ways[0]}: ${sign}`, { gas });
  });
  return [...told, ...noteWordings(row)];
}

const flameWordings = (row: PublishedRow, { resultingColour }: PublishedObservation): PublishedWording[] =>
  resultingColour === null
    ? []
    : resultingColour.startsWith("no ")
      ? [one(row, resultingColour, { flame: false }, { flame: true })]
      : [
          one(row, `${resultingColour} flame`, { flame: resultingColour }),
          one(row, resultingColour, { flame: resultingColour }, { flame: true }),
        ];

function heatWordings(row: PublishedRow, { colour, resultingColour }: PublishedObservation): PublishedWording[] {
  if (colour === null || resultingColour === null) return [];
  if (colour.startsWith("no residue")) {
    const sublimate = resultingColour.includes("sublimate");
    return [
      one(row, "no residue", { residue: false }),
      ...(sublimate ? [one(row, resultingColour, { sublimate: coloursIn(resultingColour) })] : []),
    ];
  }
  if (colour.endsWith("vapour"))
    return [
      one(row, colour, { fumes: coloursIn(colour) }),
      one(row, resultingColour, { sublimate: coloursIn(resultingColour) }),
    ];
  const residue = { hot: coloursIn(colour), cold: coloursIn(resultingColour) };
  return [one(row, `${colour} when hot, ${resultingColour} when cold`, { residue }, { heated: true })];
}

/** Of the notes, the clauses that hold the sign of the row's gas. */
function noteWordings(row: PublishedRow): PublishedWording[] {
  const { gas, notes } = row.observation;
  const clauses = (notes ?? "").split(/[;.:(]/).map((clause) => clause.trim());
  return clauses.flatMap((clause) => {
    if (gas === null) return [];
    if (/litmus blue|litmus turns blue/.test(clause)) return [one(row, clause, { gas: "NH3" })];
    if (/limewater milky|limewater turns/.test(clause)) return [one(row, clause, { gas: "CO2" })];
    if (/splint relights/.test(clause)) return [one(row, clause, { gas: "O2" })];
    if (/^brown fumes/.test(clause)) return [one(row, clause, { fumes: ["brown"] })];
    return [];
  });
}

const isColour = (word: string): word is Colour => Object.hasOwn(COLOURS, word);
const sameWord = (wanted: string, seen: Colour): boolean =>
  isColour(wanted) ? seen === wanted : colourAgrees(wanted, seen);

/** What is wrong with a reading, in words; undefined when it says just what the row says. */
export function misread({ text, asked, means, standsFor = [] }: PublishedWording): string | undefined {
  const oneOf = (wanted: readonly string[], colour: Colour | undefined): boolean =>
    colour !== undefined && [...wanted, ...standsFor].some((word) => sameWord(word, colour));
  const { seen = {}, questions } = readWords(text, asked);
  const doubts = questions.filter((question) => /^Not understood|is read as/.test(question));
  if (doubts.length > 0) return doubts.join(" ");
  const wrong = (what: string) => `${what} is read as ${JSON.stringify(seen)}`;
  if (means.none && !seen.none) return wrong("no change");
  if (means.precipitate === false && seen.precipitate !== false) return wrong("no precipitate");
  if (means.precipitate) {
    const { colour, slight } = means.precipitate;
    if (!seen.precipitate || !oneOf([colour], seen.precipitate.colour)) return wrong(`${colour} precipitate`);
    if (slight !== (seen.precipitate.amount === "slight")) return wrong("its amount");
  }
  if (means.fate && seen.fate !== means.fate) return wrong(means.fate);
  if (means.solution && !oneOf(means.solution, seen.solution)) return wrong(`${means.solution.join(" or ")} solution`);
  if (means.gas && !(seen.gas && seen.gas.formula === means.gas)) return wrong(means.gas);
  if (means.flame === false && seen.flame !== false) return wrong("no flame");
  if (means.flame && !(seen.flame && oneOf([means.flame], seen.flame))) return wrong(`${means.flame} flame`);
  if (means.residue === false && seen.residue !== false) return wrong("no residue");
  if (means.residue) {
    if (!seen.residue || !oneOf(means.residue.hot, seen.residue.hot)) return wrong("the hot residue");
    if (!oneOf(means.residue.cold, seen.residue.cold)) return wrong("the cold residue");
  }
  if (means.sublimate && !oneOf(means.sublimate, seen.sublimate)) return wrong("the sublimate");
  if (means.fumes && !oneOf(means.fumes, seen.fumes)) return wrong("the fumes");
  // Nothing beside what the row says.
  const more = (Object.keys(seen) as (keyof Observation)[]).find((key) => !(key in means) && key !== "effervescence");
  return more && wrong(`nothing of its ${more}`);
}

const reasons = reference<Record<string, string>>("known-differences-wording.json");

export function compareWordings(): Comparison {
  const result = comparison(
    "words of the published tables, read",
    "tests/reference/qualitative-tables.json (boards' published notes and textbooks)",
  );
  const all = publishedWordings();
  const choices = all.filter(isChoice);
  if (choices.length > 0)
    result.left["a line of two sights of which one is seen, so no line of a record"] = choices.length;
  for (const wording of all) {
    if (isChoice(wording)) continue;
    result.compared++;
    const difference = misread(wording);
    if (difference === undefined) result.agreed++;
    else {
      const id = `${wording.id}: ${wording.text}`;
      result.misses.push({ id, difference, reason: reasons[id] });
    }
  }
  const silent = publishedRows.filter(({ id }) => !all.some((wording) => wording.id === id));
  if (silent.length > 0) result.left["no words for a sight that a record has a place for"] = silent.length;
  return result;
}
