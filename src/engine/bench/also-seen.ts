/** Readings of a test that are right beside a predicted one: a colour by another name, a colour that fades, metal on the foil. */
import { ALSO_CALLED, FOIL_DEPOSITS } from "../constants/later-looks.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import type { Colour } from "../practical/same-colour.ts";
import type { Observation } from "../practical.ts";
import { metalsOf } from "./metals.ts";
import type { TestTrace } from "./trace.ts";

/** Whatever else may be told of the same sight; `reading` itself is not among it. */
export function alsoSeen(trace: TestTrace, reading: Observation): Observation[] {
  const { none: _, ...seen } = reading;
  const hidden = seen.precipitate && seen.fate !== "dissolves";
  return [
    ...(hidden ? [] : calledOtherwise(trace, seen.solution).map((solution) => ({ ...seen, solution }))),
    ...(seen.solution === undefined ? faded(trace).map((solution) => ({ ...seen, solution })) : []),
    ...(seen.precipitate
      ? []
      : deposits(trace).map((colour) => ({ ...gone(seen), precipitate: { colour, amount: "plain" } as const }))),
  ];
}

/** Without the word that a solid remains: the foil has taken it. */
function gone({ fate, ...seen }: Observation): Observation {
  return fate === undefined || fate === "remains" ? seen : { ...seen, fate };
}

const calledOtherwise = ({ end, after }: TestTrace, colour: Colour | undefined): Colour[] =>
  ALSO_CALLED.filter(
    ({ of, seen, below = Number.POSITIVE_INFINITY }) =>
      seen === colour && of.every((id) => (end.get(id) ?? 0) > 0) && (after?.absorbance ?? 0) < below,
  ).map(({ also }) => also);

/** A colour that has lost plainly more than dilution takes, to a change of oxidation state, though it has kept its name. */
function faded({ before, after, reactions }: TestTrace): Colour[] {
  if (!before || !after || reactions.length === 0 || before.solution !== after.solution) return [];
  if (after.solution === "colourless") return [];
  const diluted = (before.absorbance * before.cm3) / after.cm3;
  return after.absorbance <= diluted * (1 - VISIBILITY.fades.value) ? [after.solution, "colourless"] : [];
}

/** What the foil throws out while it makes gas of the alkali. */
function deposits({ reactions, end }: TestTrace): Colour[] {
  if (!reactions.some(({ equation }) => equation.includes("Al(s)"))) return [];
  const there = FOIL_DEPOSITS.filter(({ of }) => [...end.keys()].some((id) => holds(id, of)));
  return [...new Set(there.flatMap(({ colours }) => colours))];
}

const holds = (species: string, cation: string): boolean =>
  metalsOf(cation).every((metal) => metalsOf(species).includes(metal));
