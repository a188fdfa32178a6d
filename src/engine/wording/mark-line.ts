/**
 * Marks one line of a record, written in somebody's own words, against what was there to be seen: a mark for each thing that earns credit by
 * itself (`credit.ts`), and for each mark lost the reason. Another name for the same colour is as good.
 */
import * as say from "#words/marking.ts";
import { GASES } from "#words/observation.ts";
import { mayBe } from "../bench/agreement.ts";
import type { Colour } from "../practical/same-colour.ts";
import { sameColour } from "../practical/same-colour.ts";
import type { Observation } from "../practical.ts";
import { type Credit, type CreditFor, creditsOf } from "./credit.ts";
import { phrase } from "./phrase.ts";
import type { ReadWords } from "./read-words.ts";

export interface LineMark {
  for: CreditFor;
  /** What earns the mark. */
  words: string;
  earned: boolean;
  /** Why it is lost: a sentence to the writer; absent when it is earned. */
  reason?: string;
}

export interface MarkedLine {
  marks: LineMark[];
  /** What was written and was not there, in words; it costs no mark of its own. */
  besides: string[];
}

/** What is in the tube when the test begins. */
export interface TubeAtStart {
  /** What a solid in it is called. */
  solid?: "precipitate" | "solid";
  /** The colour of its liquid, where it is known. */
  liquid?: Colour;
}

/**
 * @param own the line as read; undefined when nothing was written
 * @param accepted what may be seen, the likeliest first: the one that earns the greatest share of its marks is taken
 */
export function markLine(
  own: ReadWords | undefined,
  accepted: readonly Observation[],
  { solid = "precipitate", liquid }: TubeAtStart = {},
): MarkedLine {
  const tried = accepted.map((seen) => markAgainst(own, seen, solid, liquid));
  const share = ({ marks }: MarkedLine) => marks.filter(({ earned }) => earned).length / marks.length;
  // A line that says just what may also be seen there is as right; a part of it is not.
  return (
    tried.find((line, index) => (index === 0 ? share(line) === 1 : isWhole(own, accepted[index], liquid))) ?? tried[0]
  );
}

const isWhole = (own: ReadWords | undefined, seen: Observation, liquid: Colour | undefined): boolean =>
  own?.seen !== undefined &&
  own.missing.length === 0 &&
  mayBe(own.seen, seen) &&
  mayBe(seen, own.seen) &&
  (seen.stays === undefined || saysWhatStays(own.seen, liquid));

/** "No visible change" in a liquid that a coloured reagent has coloured says nothing of it, unless the colour is named: "stays purple". */
const saysWhatStays = ({ stays, solution }: Observation, liquid: Colour | undefined): boolean =>
  (stays ?? solution) !== undefined || (liquid !== undefined && liquid !== "colourless");

function markAgainst(
  own: ReadWords | undefined,
  seen: Observation,
  solid: "precipitate" | "solid",
  liquid: Colour | undefined,
): MarkedLine {
  const marks = creditsOf(seen, solid).map((credit): LineMark => {
    const reason = own?.seen ? reasonLost(credit, own, own.seen, seen, liquid) : say.NOTHING_READ;
    return { ...credit, earned: reason === undefined, ...(reason && { reason }) };
  });
  return { marks, besides: own?.seen ? besides(own.seen, seen, solid) : [] };
}

/** Undefined when the mark is earned. */
function reasonLost(
  credit: Credit,
  { missing, named }: ReadWords,
  own: Observation,
  seen: Observation,
  liquid: Colour | undefined,
): string | undefined {
  switch (credit.for) {
    case "none":
      if (missing.includes("sight")) return say.CONCLUDED;
      if (own.none) return undefined;
      if (deniesChange(own)) return colourLost("solution", own.solution ?? liquid, liquid);
      return own.fate === "remains" && !own.precipitate && !missing.includes("colour")
        ? undefined
        : say.NOTHING_CHANGED;
    case "effervescence":
      return own.effervescence === seen.effervescence || (!seen.effervescence && !own.effervescence)
        ? undefined
        : say.BUBBLES;
    case "precipitate": {
      if (!seen.precipitate) return own.precipitate ? say.NO_PRECIPITATE : undefined;
      if (!own.precipitate) return say.PRECIPITATE;
      if (missing.includes("one precipitate")) return say.SAID_TWICE;
      return colourLost("precipitate", own.precipitate.colour, seen.precipitate.colour);
    }
    case "fate":
      if (missing.includes("sight")) return say.CONCLUDED;
      if (missing.includes("one fate")) return say.SAID_TWICE;
      if (own.fate === seen.fate || (own.none && seen.fate === "remains")) return undefined;
      return own.fate ? say.FATES[seen.fate ?? "remains"] : say.FATE;
    case "solution":
      if (missing.includes("one solution")) return say.SAID_TWICE;
      if (own.solution) return colourLost("solution", own.solution, seen.solution);
      return missing.includes("solution") ? say.CLEAR : say.notSaid("solution");
    case "gas test":
      if (seen.gas === false) return own.gas === false ? undefined : say.GAS_SHOWED_NOTHING;
      if (!own.gas) return say.GAS_TEST;
      if (missing.includes("one gas test")) return say.SAID_TWICE;
      if (missing.includes("gas test")) return say.GAS_ONLY_NAMED;
      return own.gas.evidence === seen.gas?.evidence || (isCloud(own.gas.evidence) && isCloud(seen.gas?.evidence))
        ? undefined
        : say.OTHER_SIGN;
    case "gas name": {
      if (!seen.gas) return undefined;
      if (missing.includes("one gas name")) return say.SAID_TWICE;
      const right = named === seen.gas.formula;
      return right ? undefined : named ? say.itWas(GASES[seen.gas.formula]) : say.GAS_NAME;
    }
    case "residue":
      return own.residue === false ? undefined : say.NOTHING_LEFT;
    case "hot":
    case "cold": {
      // One colour said of the residue is said of both when it does not change.
      const one = seen.residue && seen.residue.hot === seen.residue.cold ? own.residue || undefined : undefined;
      const mine = (own.residue ? own.residue[credit.for] : undefined) ?? one?.cold ?? one?.hot;
      const its = seen.residue ? seen.residue[credit.for] : undefined;
      return mine ? colourLost(credit.for, mine, its) : say.notSaid(credit.for);
    }
    case "flame":
      if (own.flame === undefined) return say.notSaid("flame");
      if (missing.includes("one flame")) return say.SAID_TWICE;
      if (!own.flame || !seen.flame)
        return !own.flame === !seen.flame ? undefined : seen.flame ? say.flameWas(seen.flame) : say.NO_FLAME;
      return colourLost("flame", own.flame, seen.flame);
    case "droplets":
      return own.droplets ? undefined : say.DROPLETS;
    case "indicator":
    case "fumes":
    case "sublimate": {
      const mine = own[credit.for];
      return mine ? colourLost(credit.for, mine, seen[credit.for]) : say.notSaid(credit.for);
    }
  }
}

/**
 * "No precipitate", "no bubbles", "no gas", and beside these at most the colour of the liquid: where nothing was to be seen they say so, if
 * the liquid is of that colour.
 */
function deniesChange({ solution: _, ...own }: Observation): boolean {
  const { precipitate, effervescence, gas, ...others } = own;
  const said = [precipitate, effervescence, gas];
  return precipitate === false && said.every((one) => !one) && Object.keys(others).length === 0;
}

const isCloud = (evidence: string | undefined): boolean => evidence?.startsWith("limewater turns milky") ?? false;

function colourLost(
  of: Parameters<typeof say.otherColour>[0],
  own: Colour | undefined,
  seen: Colour | undefined,
): string | undefined {
  return own === undefined || seen === undefined || sameColour(own, seen) ? undefined : say.otherColour(of, seen, own);
}

/** Things written that were not there. */
function besides(own: Observation, seen: Observation, solid: "precipitate" | "solid"): string[] {
  const told: Observation[] = [];
  if (own.precipitate && !seen.precipitate) told.push({ precipitate: own.precipitate });
  if (own.effervescence && !seen.effervescence) told.push({ effervescence: true });
  if (own.gas && !seen.gas) told.push({ gas: own.gas });
  if (own.fate && own.fate !== "remains" && !seen.fate) told.push({ fate: own.fate });
  if (own.fumes && !seen.fumes) told.push({ fumes: own.fumes });
  if (own.sublimate && !seen.sublimate) told.push({ sublimate: own.sublimate });
  return told.map((one) => phrase(one, solid));
}
