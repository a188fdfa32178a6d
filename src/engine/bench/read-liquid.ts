/** From a trace to what is said of the liquid: its colour at the end, one that was lost on the way, and whether it is a change at all. */
import { VISIBILITY } from "../constants/visibility.ts";
import { sameColour } from "../practical/same-colour.ts";
import type { Colour, Observation } from "../practical.ts";
import type { Sight } from "./sight.ts";
import type { Poured, TestTrace } from "./trace.ts";

/** Absorbance from which the colour of a liquid, only diluted, is worth saying to have gone. */
const PLAINLY_COLOURED = VISIBILITY.absorbance.value * VISIBILITY.plainlyColoured.value;

/** The colour of the liquid at the end, and whether it changed by more than dilution. */
export function solutionSeen(trace: TestTrace): { colour: Observation["solution"]; worthSaying: boolean } | undefined {
  const { before, after } = trace;
  if (!after) return undefined;
  const first = before ?? trace.during[0];
  if (!first || trace.dry) return { colour: after.solution, worthSaying: after.solution !== "colourless" };
  const hidden = after.solids.some(({ gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.visible.value);
  if (first.solution === after.solution)
    return { colour: after.solution, worthSaying: !hidden && pouredPlainly(trace, after.cm3) !== undefined };
  // A tint that many call colourless is not told from none over a precipitate, unless a reaction took a colour away.
  if (hidden && trace.reactions.length === 0 && sameColour(after.solution, "colourless"))
    return { colour: after.solution, worthSaying: false };
  const diluted = (first.absorbance * first.cm3) / after.cm3;
  if (after.solution === "colourless") return { colour: after.solution, worthSaying: diluted > PLAINLY_COLOURED };
  return { colour: after.solution, worthSaying: true };
}

/** The colour of a reagent plainly coloured of itself, where the liquid at the end does not show it. */
function pouredPlainly({ poured, after }: TestTrace, cm3: number): Observation["solution"] {
  if (!poured || poured.solution === after?.solution) return undefined;
  return (poured.absorbance * poured.cm3) / cm3 > PLAINLY_COLOURED ? poured.solution : undefined;
}

/**
 * The colour of the liquid as long as a coloured reagent lost its own in it, where an excess of that reagent colours it at the end. What
 * was in the tube before the reagent tells nothing of that, nor does so little of it that it would not be seen anyway.
 */
export function colourLost({ poured, after, during }: TestTrace): Observation["solution"] {
  if (!poured || poured.solution !== after?.solution) return undefined;
  return during.slice(poured.looks).findLast((sight) => losesColour(poured, sight))?.solution;
}

/** Whether a clear liquid lacks the colour of what was poured into it, which only diluted would be plain and hide any other there. */
function losesColour(poured: Poured, { solution, absorbance, cm3, solids }: Sight): boolean {
  if (sameColour(solution, poured.solution)) return false;
  if (solids.some(({ gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.visible.value)) return false;
  const there = Math.min(poured.cm3, Math.max(0, cm3 - poured.into));
  const diluted = (poured.absorbance * there) / cm3;
  return diluted > Math.max(PLAINLY_COLOURED, absorbance);
}

/**
 * Yellows that acid makes paler without a reaction anyone would name: the colour of an iron(III) salt is that of its hydroxo complexes, which
 * acid takes away (any textbook). Many hands write nothing down for it (common practice, no source).
 */
const FADES: Partial<Record<Colour, readonly Colour[]>> = {
  "yellow-brown": ["yellow", "pale yellow", "colourless"],
  yellow: ["pale yellow", "colourless"],
  "pale yellow": ["colourless"],
};

/**
 * Whether a person may call it no change that the liquid has the colour it has: it had it before, or it is that of a coloured reagent which
 * did nothing. "Stays purple" is "no visible change" to a mark scheme (common practice, no source).
 */
export function isUnchanged({ before, after, poured, reactions }: TestTrace): boolean {
  if (!after || reactions.length > 0) return false;
  const started = before?.solution ?? "colourless";
  if (sameColour(started, after.solution) || FADES[started]?.includes(after.solution)) return true;
  return started === "colourless" && poured !== undefined && poured.diluted === after.solution;
}

/** Every colour that could be read into the liquid of a test: its own at any look, and those of solids it stands over. White tints nothing. */
export function coloursInSight({ before, during, after }: TestTrace): Colour[] {
  const colours = new Set<Colour>();
  for (const sight of [before, ...during, after]) {
    if (!sight) continue;
    colours.add(sight.solution);
    for (const { colour, gramsPerDm3 } of sight.solids) if (gramsPerDm3 >= VISIBILITY.unseen.value) colours.add(colour);
  }
  colours.delete("white");
  return [...colours];
}
