/** Which couples meet in a mixture: those whose parts are there, and that ever react with one another. */
import { mayEverPass } from "./gate.ts";
import { type HalfEquation, halfEquations, type Part } from "./half-equation.ts";
import { AIR } from "./substances.ts";

export interface Pair {
  oxidant: HalfEquation;
  reductant: HalfEquation;
  /** Ids of the couples: `MnO4-/Mn^2+ with Fe^3+/Fe^2+`. */
  id: string;
}

const pairId = (oxidant: HalfEquation, reductant: HalfEquation): string =>
  `${oxidant.couple.id} with ${reductant.couple.id}`;

/** Every pair that may react somewhere, in the order of the table of potentials. */
const pairs: readonly Pair[] = halfEquations.flatMap((oxidant) =>
  halfEquations
    .filter((reductant) => reductant !== oxidant && mayEverPass(oxidant, reductant))
    .map((reductant) => ({
      oxidant,
      reductant,
      id: pairId(oxidant, reductant),
    })),
);

const byId = new Map(pairs.map((pair) => [pair.id, pair]));

/** The pair of an id. Throws a RangeError for what is no pair's id. */
export function pairOf(id: string): Pair {
  const found = byId.get(id);
  if (!found) throw new RangeError(`redox: found "${id}", expected the id of a pair of couples`);
  return found;
}

/** What the oxidant of a pair, and what its reductant, turn into one another. Throws what `pairOf` throws. */
export function familiesOf(id: string): readonly [oxidising: string, oxidised: string] {
  const { oxidant, reductant } = pairOf(id);
  return [oxidant.family, reductant.family];
}

/** Pairs found so far, by the components that are there: every drop of a reagent asks for the same ones again. */
const known = new Map<string, readonly Pair[]>();
/** What was asked last; it is mostly asked again. */
let last: { there: readonly string[]; found: readonly Pair[] } = { there: [], found: [] };

/** Pairs of which something of either side is there, given the components (and the air) that are. */
export function pairsAmong(there: readonly string[]): readonly Pair[] {
  if (there.length !== last.there.length || there.some((id, n) => id !== last.there[n]))
    last = { there, found: foundAmong(there) };
  return last.found;
}

function foundAmong(there: readonly string[]): readonly Pair[] {
  const key = there.join(" ");
  const before = known.get(key);
  if (before) return before;
  const ids = new Set(there);
  const oxidants = new Set(halfEquations.filter(({ oxidised }) => mayTakePart(oxidised, ids)));
  const reductants = new Set(halfEquations.filter(({ reduced }) => mayTakePart(reduced, ids)));
  const found = pairs.filter(({ oxidant, reductant }) => oxidants.has(oxidant) && reductants.has(reductant));
  known.set(key, found);
  return found;
}

/** Whether a side of a half-equation can take part: something of it besides the solvent is there. What is missing may cancel in the pair. */
function mayTakePart(side: readonly Part[], there: ReadonlySet<string>): boolean {
  const needs = side.map(needsOf).filter((ids) => ids.length > 0);
  return needs.length === 0 || needs.some((ids) => ids.every((id) => there.has(id)));
}

/** What a substance needs to be there: its components besides the solvent's, or the air. */
const needsOf = ({ id, components }: Part): string[] =>
  AIR in components || id === AIR
    ? [AIR]
    : Object.keys(components).filter((component) => component !== "H+" && component !== "H2O");
