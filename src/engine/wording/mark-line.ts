/**
 * Marks one line of a record, written in somebody's own words, against what was there to be seen: a mark for each thing that earns credit by
 * itself (`credit.ts`), and for each mark lost the reason. Another name for the same colour is as good.
 */
import { mayBe } from "../bench/agreement.ts";
import type { Colour } from "../practical/same-colour.ts";
import { sameColour } from "../practical/same-colour.ts";
import type { Observation } from "../practical.ts";
import { type Credit, type CreditFor, creditsOf } from "./credit.ts";
import { GAS_NAMES, phrase } from "./phrase.ts";
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

/**
 * @param own the line as read; undefined when nothing was written
 * @param accepted what may be seen, the likeliest first: the one that earns the greatest share of its marks is taken
 * @param solid what is in the tube at the start
 */
export function markLine(
  own: ReadWords | undefined,
  accepted: readonly Observation[],
  solid: "precipitate" | "solid" = "precipitate",
): MarkedLine {
  const tried = accepted.map((seen) => markAgainst(own, seen, solid));
  const share = ({ marks }: MarkedLine) => marks.filter(({ earned }) => earned).length / marks.length;
  // A line that says just what may also be seen there is as right; a part of it is not.
  return tried.find((line, index) => (index === 0 ? share(line) === 1 : isWhole(own, accepted[index]))) ?? tried[0];
}

const isWhole = (own: ReadWords | undefined, seen: Observation): boolean =>
  own?.seen !== undefined && own.missing.length === 0 && mayBe(own.seen, seen) && mayBe(seen, own.seen);

function markAgainst(own: ReadWords | undefined, seen: Observation, solid: "precipitate" | "solid"): MarkedLine {
  const marks = creditsOf(seen, solid).map((credit): LineMark => {
    const reason = own?.seen ? reasonLost(credit, own, own.seen, seen) : NOTHING;
    return { ...credit, earned: reason === undefined, ...(reason && { reason }) };
  });
  return { marks, besides: own?.seen ? besides(own.seen, seen, solid) : [] };
}

const CONCLUDED = '"No reaction" is a conclusion: the mark is for what is seen.';
const NOTHING = "Nothing that could be read stands in this line.";

/** Undefined when the mark is earned. */
function reasonLost(
  credit: Credit,
  { missing, named }: ReadWords,
  own: Observation,
  seen: Observation,
): string | undefined {
  switch (credit.for) {
    case "none":
      if (missing.includes("sight")) return CONCLUDED;
      return own.none || (own.fate === "remains" && !own.precipitate)
        ? undefined
        : 'Nothing changed here: write "no visible change".';
    case "effervescence":
      return own.effervescence === seen.effervescence || (!seen.effervescence && !own.effervescence)
        ? undefined
        : "Bubbles were seen: write effervescence.";
    case "precipitate": {
      if (!seen.precipitate) return own.precipitate ? "There was no precipitate." : undefined;
      if (!own.precipitate) return "That a precipitate formed, and its colour, is not said.";
      return colourLost("precipitate", own.precipitate.colour, seen.precipitate.colour);
    }
    case "fate":
      if (missing.includes("sight")) return CONCLUDED;
      if (own.fate === seen.fate || (own.none && seen.fate === "remains")) return undefined;
      return own.fate ? `The solid ${FATES[seen.fate ?? "remains"]}.` : "What became of the solid is not said.";
    case "solution":
      if (own.solution) return colourLost("solution", own.solution, seen.solution);
      return missing.includes("solution")
        ? 'The colour of the solution is not said; "clear" is no colour.'
        : "The colour of the solution is not said.";
    case "gas test":
      if (seen.gas === false) return own.gas === false ? undefined : "That the gas test showed nothing is not said.";
      if (!own.gas) return "The test of the gas, and what it showed, is not said.";
      if (missing.includes("gas test")) return "The gas is named, but the mark is for its test.";
      return own.gas.evidence === seen.gas?.evidence || (isCloud(own.gas.evidence) && isCloud(seen.gas?.evidence))
        ? undefined
        : "This is not what the test of the gas showed.";
    case "gas name": {
      if (!seen.gas) return undefined;
      const right = named === seen.gas.formula;
      return right ? undefined : named ? `It was ${GAS_NAMES[seen.gas.formula]}.` : "The gas is not named.";
    }
    case "residue":
      return own.residue === false ? undefined : "Nothing was left: that is not said.";
    case "hot":
    case "cold": {
      // One colour said of the residue is said of both when it does not change.
      const one = seen.residue && seen.residue.hot === seen.residue.cold ? own.residue || undefined : undefined;
      const mine = (own.residue ? own.residue[credit.for] : undefined) ?? one?.cold ?? one?.hot;
      const its = seen.residue ? seen.residue[credit.for] : undefined;
      return mine
        ? colourLost(`${credit.for} residue`, mine, its)
        : `The colour of the ${credit.for} residue is not said.`;
    }
    case "flame":
      if (own.flame === undefined) return "The colour of the flame is not said.";
      if (!own.flame || !seen.flame)
        return !own.flame === !seen.flame
          ? undefined
          : seen.flame
            ? `The flame was ${seen.flame}.`
            : "The flame had no colour of its own.";
      return colourLost("flame", own.flame, seen.flame);
    case "droplets":
      return own.droplets ? undefined : "The drops on the cool wall are not noted.";
    case "indicator":
    case "fumes":
    case "sublimate": {
      const mine = own[credit.for];
      return mine
        ? colourLost(WHAT[credit.for], mine, seen[credit.for])
        : `The colour of the ${WHAT[credit.for]} is not said.`;
    }
  }
}

const WHAT = { indicator: "indicator", fumes: "fumes", sublimate: "solid on the cool wall" } as const;
const FATES = { remains: "remained", "partly dissolves": "dissolved in part", dissolves: "dissolved" } as const;
const isCloud = (evidence: string | undefined): boolean => evidence?.startsWith("limewater turns milky") ?? false;

function colourLost(what: string, own: Colour, seen: Colour | undefined): string | undefined {
  return seen === undefined || sameColour(own, seen) ? undefined : `The ${what} was ${seen}, not ${own}.`;
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
