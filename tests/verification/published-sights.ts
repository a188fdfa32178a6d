/**
 * What the boards' notes say each ion shows, test by test, as whole sets of observations: one for each board that differs and for each
 * wording that is credited too. And which of the ions could be meant by such a set, judged by the notes alone.
 */
import { COLOURS } from "../../src/engine/constants/colours.ts";
import { type Colour, GAS_EVIDENCE, type GasSeen, type Observation } from "../../src/engine/practical.ts";
import {
  colourSynonyms,
  type PublishedObservation,
  type PublishedRow,
  publishedRows,
  trialsOf,
} from "./qualitative-rows.ts";
import type { Steps } from "./qualitative-steps.ts";
import { endColours } from "./qualitative-words.ts";

/** One published sight: which row says it of which test, and what is seen. */
export interface PublishedSight extends PublishedObservation {
  row: PublishedRow;
  /** Tests of one tube, the last of which shows it. */
  steps: Steps;
}

/** What one ion shows in all the tests its rows speak of, as one board has it. */
export interface Variant {
  ion: string;
  sights: PublishedSight[];
}

interface Choice {
  board: string | undefined;
  sights: PublishedSight[];
}

/** What the rows that pass `of` print for one ion. */
export const sightsOf = (ion: string, of: (row: PublishedRow) => boolean): PublishedSight[] =>
  publishedRows.filter(of).flatMap((row) => {
    const trials = trialsOf(row);
    if (typeof trials === "string") return [];
    return trials
      .filter(({ sample, simple }) => sample === ion && simple !== undefined)
      .flatMap(({ steps, expected }) =>
        // "A few drops or in excess" speaks of both.
        (row.stage.startsWith("a few drops or") ? [steps.slice(0, 1), steps] : [steps]).map(
          (steps): PublishedSight => ({ ...expected, row, steps }),
        ),
      );
  });

/** Every set of observations that rows which pass `of` give for one ion. */
export function variantsOf(ion: string, of: (row: PublishedRow) => boolean): Variant[] {
  const sights = sightsOf(ion, of);
  const reagents = Map.groupBy(sights, ({ row }) => `${row.reagent}${row.section === "cation-alkali" ? "" : row.id}`);
  const slots = [...reagents.values()].map((all) =>
    [...Map.groupBy(all, ({ row }) => row.board)].flatMap(([board, own]) =>
      wordings(own).map((sights) => ({ board, sights })),
    ),
  );
  const combined = slots.reduce<Choice[][]>(
    (sets, slot) => sets.flatMap((set) => slot.map((choice) => [...set, choice])),
    [[]],
  );
  const has = (slot: number, board: string | undefined) => slots[slot].some((choice) => choice.board === board);
  // What one board says of one reagent goes with what the same board says of another.
  const together = (set: Choice[]) =>
    set.every((a, s) => set.every((b, t) => a.board === b.board || !(has(t, a.board) || has(s, b.board))));
  return combined.filter(together).map((set) => ({ ion, sights: set.flatMap((choice) => choice.sights) }));
}

/** The rows as printed, and once more for each wording that is credited too. */
function wordings(sights: PublishedSight[]): PublishedSight[][] {
  const most = Math.max(...sights.map(({ row }) => row.alsoAccept?.length ?? 0));
  const changed = Array.from({ length: most }, (_, at) =>
    sights.map((sight): PublishedSight => {
      const other = sight.row.alsoAccept?.[at];
      // Where no precipitate forms, none is left to dissolve or to stay.
      return other?.precipitate === false
        ? { ...sight, precipitate: false, colour: null, solubleInExcess: null, resultingColour: null }
        : { ...sight, ...other };
    }),
  );
  return [sights, ...changed];
}

const testOf = ({ steps }: PublishedSight): string => JSON.stringify(steps);

/**
 * The one table of a board that was read in full. Its anions have one test each: what one of them gives there, the others do not, unless a
 * row says it of an ion that may keep them company.
 */
export const BOARD_TABLE = "CAIE-0620-2023";
const inBoardTable = ({ row }: PublishedSight): boolean => row.sources.includes(BOARD_TABLE);

/**
 * Whether the notes alone leave an ion when these observations are recorded: `true` when a variant of it agrees with all of them, `false`
 * when each of its variants disagrees with one. Undefined when the notes say too little: no row for one of the tests, and where one is missing it
 * may be an ion of the other kind that shows what is recorded.
 * @param company what the rows print of the ions of the other kind that the paper offers
 */
export function leftByNotes(
  recorded: Variant,
  variants: readonly Variant[],
  company: readonly PublishedSight[],
): boolean | undefined {
  const byCompany = (sight: PublishedSight) =>
    company.some((other) => testOf(other) === testOf(sight) && sameSight(sight, other));
  const verdicts = variants.map((other) => {
    const listed = other.sights.some(inBoardTable);
    const pairs = recorded.sights.map(
      (sight) => [sight, other.sights.find((one) => testOf(one) === testOf(sight))] as const,
    );
    if (
      pairs.some(([sight, one]) => (one ? !sameSight(sight, one) : listed && inBoardTable(sight) && !byCompany(sight)))
    )
      return false;
    return pairs.every(([, one]) => one) ? true : undefined;
  });
  if (verdicts.includes(true)) return true;
  return verdicts.length > 0 && verdicts.every((verdict) => verdict === false) ? false : undefined;
}

/**
 * True when two published sights can be one. Rows give no strengths, so a slight and a plain precipitate are not told apart; a colour that
 * is not mentioned was not looked at.
 */
function sameSight(a: PublishedSight, b: PublishedSight): boolean {
  if (Boolean(a.precipitate) !== Boolean(b.precipitate)) return false;
  if (a.precipitate && !sameWord(a.colour, b.colour)) return false;
  if (a.solubleInExcess !== null && b.solubleInExcess !== null && a.solubleInExcess !== b.solubleInExcess) return false;
  if ((a.gas ?? "").split(" ")[0] !== (b.gas ?? "").split(" ")[0]) return false;
  const [ends, others] = [liquidOf(a), liquidOf(b)];
  return ends.length === 0 || others.length === 0 || ends.some((end) => others.some((other) => sameWord(end, other)));
}

/** The boards' own synonyms only, from the file with the notes. */
function sameWord(a: string | null, b: string | null): boolean {
  if (a === null || b === null || a === b) return true;
  return (colourSynonyms[a]?.includes(b) || colourSynonyms[b]?.includes(a)) ?? false;
}

/** Colours of the liquid at the end; none where a solid stays or nothing is said. */
function liquidOf({ resultingColour, solubleInExcess, precipitate, row }: PublishedSight): string[] {
  if (isQuiet(row) || resultingColour === "colourless, unchanged") return ["colourless"];
  if (resultingColour === null || solubleInExcess === false || solubleInExcess === "partially") return [];
  return precipitate && solubleInExcess === null ? [] : endColours(resultingColour, false);
}

const isQuiet = ({ observation }: PublishedRow): boolean => observation.notes?.includes("no visible change") ?? false;

/** The same as a reader would record it; undefined when the record has no such word. */
export function asRecorded(sight: PublishedSight): Observation | undefined {
  const { precipitate, colour, solubleInExcess, gas, row } = sight;
  if (colour !== null && !isColour(colour)) return undefined;
  const formed =
    precipitate && colour ? ({ colour, amount: precipitate === "slight" ? "slight" : "plain" } as const) : undefined;
  if (gas !== null) {
    const seen = gasSeen(gas);
    return seen && { ...(formed && { precipitate: formed }), gas: seen };
  }
  const [liquid] = liquidOf(sight);
  if (liquid !== undefined && !isColour(liquid)) return undefined;
  if (solubleInExcess !== null && isAfterwards(row)) {
    if (solubleInExcess === "partially") return { fate: "partly dissolves" };
    return solubleInExcess ? { fate: "dissolves", ...(liquid && { solution: liquid }) } : { fate: "remains" };
  }
  if (!precipitate) {
    if (isQuiet(row) || isAfterwards(row)) return { none: true };
    return { precipitate: false, ...(liquid && { solution: liquid }) };
  }
  return formed && { precipitate: formed };
}

/** Rows whose reagent meets a precipitate that is there already. */
const isAfterwards = ({ stage, reagent }: PublishedRow): boolean =>
  stage.startsWith("in excess") || reagent.startsWith("then ");

const isColour = (word: string): word is Colour => Object.hasOwn(COLOURS, word);

function gasSeen(published: string): GasSeen | undefined {
  const [formula] = published.split(" ");
  if (formula !== "NH3" && formula !== "CO2" && formula !== "SO2") return undefined;
  return { formula, evidence: GAS_EVIDENCE[formula] };
}
