/**
 * Changes of oxidation state in a test tube, decided from standard potentials and kinetic gates.
 *
 * Method: every couple whose oxidised form is there is set against every couple whose reduced form is there. A pair reacts when Nernst's
 * equation gives a positive electromotive force both now and when half of what can react has done so, and when its gate is open. The second
 * condition is what an equilibrium constant says: the force at the half-way point is positive only when the reaction runs past it (what
 * others make is in stops-short.ts). From
 * 0.1 V there, K is some 50-fold for each electron and grows with the power of the electrons and reactants passed, so nothing visible is
 * left of the limiting reactant and the reaction is carried out completely; below 0.1 V it is still carried out, but called borderline.
 *
 * Validity: the pH is held at its present value, complexing of products that are not there yet is left out, and standard potentials are
 * those at 25 C. A second call, after the solution has come to equilibrium again, finds what the products make possible (a catalyst, a pH
 * that has moved); call until the list is empty.
 */
import type { Components } from "../composition.ts";
import { type Passage, passage } from "./gate.ts";
import type { HalfEquation, Part } from "./half-equation.ts";
import { ionicStrengthOf, potentialOf, type Solution } from "./nernst.ts";
import { type PairEquation, pairEquation } from "./pair-equation.ts";
import { familiesOf, type Pair, pairsAmong } from "./pairs.ts";
import { AIR } from "./substances.ts";

/** A tube at equilibrium but for changes of oxidation state. */
export interface RedoxState {
  /** mol by component; pieces of metal under `Al(s)` and `Zn(s)`. */
  contents: Readonly<Components>;
  waterKg: number;
  pH: number;
  /** mol/kg of each dissolved species. */
  molality: ReadonlyMap<string, number>;
  /** mol of each solid. */
  phases: ReadonlyMap<string, number>;
  celsius: number;
  /** The tube stands open, or is shaken with air. */
  air: boolean;
  /** Something is still being poured in. */
  pouring?: boolean;
  /**
   * Pairs that have acted since something was last added or heated. Those that react only in part do so once, and none runs backwards, over
   * a third couple either: carried out completely, a reaction overshoots its equilibrium a little, and the way back is not seen.
   */
  acted?: ReadonlySet<string>;
}

export interface RedoxChange {
  /** Ids of the couples: `MnO4-/Mn^2+ with Fe^3+/Fe^2+`. */
  pair: string;
  /** mhchem, balanced. */
  equation: string;
  /** Change of each component for one turn of the equation, mol; `O2(g)` is oxygen from the air. */
  change: Components;
  /** Turns of the equation, mol. */
  turns: number;
  /** Electrons passed in one turn. */
  electrons: number;
  /** Electromotive force at the present activities, V; what is not there yet counts as a trace. */
  emf: number;
  /** The same when half of what can react has reacted, V. */
  halfway: number;
  /** Less than BORDERLINE_VOLTS at the half-way point: the reaction may stop short. */
  borderline: boolean;
  /** Why it happens in the time of a test. */
  source: string;
}

/** Our choice: a factor of 50 in K for each electron. */
export const BORDERLINE_VOLTS = 0.1;

/** Fewer turns than this are no reaction, mol. */
const LEAST_TURNS = 1e-12;

/** A component of which there is less than this is absent, mol. */
const ABSENT = 1e-12;

export interface Candidate extends Passage {
  pair: Pair;
  equation: PairEquation;
  /** Turns of the equation until a reactant is used up, mol. */
  possible: number;
  emf: number;
  halfway: number;
}

/** All changes of oxidation state that happen now, the strongest drive first; later ones get what earlier ones leave. */
export function redoxChanges(state: RedoxState): RedoxChange[] {
  const all = candidatesIn(state).sort((a, b) => b.emf - a.emf);
  if (all.length === 0) return [];
  const fast = all.filter(({ slow }) => !slow);
  const candidates = fast.length > 0 ? fast : all;
  const left: Components = { ...state.contents };
  const changes: RedoxChange[] = [];
  for (const { pair, equation, extent, needsAcid, source, emf, halfway } of candidates) {
    const turns = possibleTurns(equation, left, state, needsAcid) * extent;
    if (!(turns > LEAST_TURNS)) continue;
    for (const [id, moles] of Object.entries(equation.change)) left[id] = (left[id] ?? 0) + moles * turns;
    changes.push({
      pair: pair.id,
      equation: equation.text,
      change: equation.change,
      turns,
      electrons: equation.electrons,
      emf,
      halfway,
      borderline: halfway < BORDERLINE_VOLTS,
      source,
    });
  }
  return changes;
}

/** Whether the pair has acted and does so once only, or would undo what has acted. */
function hasActed({ id, oxidant, reductant }: Pair, extent: number, acted?: ReadonlySet<string>): boolean {
  if (!acted || acted.size === 0) return false;
  return (extent < 1 && acted.has(id)) || runsBack(oxidant.family, reductant.family, acted);
}

/** Whether what has acted took the reductant to oxidise the oxidant, itself or over others: iodine, and by it cyanidoferrate, and by that iron. */
function runsBack(oxidant: string, reductant: string, acted: ReadonlySet<string>): boolean {
  const reached = [reductant];
  for (const from of reached) {
    for (const pair of acted) {
      const [oxidising, oxidised] = familiesOf(pair);
      if (oxidising !== from) continue;
      if (oxidised === oxidant) return true;
      if (!reached.includes(oxidised)) reached.push(oxidised);
    }
  }
  return false;
}

/** Pairs with their gates open and a force now, whose force at the half-way point is as wanted: they run past it, unless said otherwise. */
export function candidatesIn(state: RedoxState, wanted = (halfway: number): boolean => halfway > 0): Candidate[] {
  const pairs = pairsAmong(thereIn(state));
  if (pairs.length === 0) return [];
  let now: Solution | undefined;
  const found: Candidate[] = [];
  for (const pair of pairs) {
    const { oxidant, reductant } = pair;
    if (!isAtWork(oxidant, state.pH) || !isAtWork(reductant, state.pH)) continue;
    const passed = passage(oxidant, reductant, state);
    if (!passed || hasActed(pair, passed.extent, state.acted)) continue;
    const equation = pairEquation(oxidant, reductant, state.pH);
    const turns = possibleTurns(equation, state.contents, state, passed.needsAcid);
    if (!(turns > LEAST_TURNS)) continue;
    now ??= { ...state, ionicStrength: ionicStrengthOf(state.molality) };
    const emf = potentialOf(oxidant, now) - potentialOf(reductant, now);
    if (!(emf > 0)) continue;
    const half = solutionAfter(now, state, equation, turns / 2, [oxidant, reductant]);
    const halfway = potentialOf(oxidant, half) - potentialOf(reductant, half);
    if (wanted(halfway)) found.push({ pair, equation, possible: turns, ...passed, emf, halfway });
  }
  return found;
}

const isAtWork = ({ couple }: HalfEquation, pH: number): boolean =>
  pH >= (couple.fromPH ?? Number.NEGATIVE_INFINITY) && pH < (couple.toPH ?? Number.POSITIVE_INFINITY);

/** Whether any two couples meet in what holds these components, whatever the circumstances. */
export const mayChange = (state: Pick<RedoxState, "contents" | "air">): boolean =>
  pairsAmong(thereIn(state)).length > 0;

/** Components that are there, and the air. */
function thereIn({ contents, air }: Pick<RedoxState, "contents" | "air">): string[] {
  const there: string[] = [];
  for (const id in contents) if (contents[id] > ABSENT) there.push(id);
  if (air) there.push(AIR);
  return there;
}

/** Below this pH a reaction uses up acid that was poured in; above it, water and weak acids give what little it needs. Our choice. */
const ACIDIFIED = 4;

/** Turns until the first reactant is used up, mol; 0 when one is not there. In an acidified mixture the acid is a reactant. */
function possibleTurns(
  { needs, change, from }: PairEquation,
  contents: Readonly<Components>,
  state: RedoxState,
  needsAcid = false,
): number {
  const missing = from.some(({ id, state: phase, components }) => {
    if (id in contents) return false;
    if (phase === "gas") return !(state.air && AIR in components);
    return !((state.phases.get(id) ?? 0) > 0);
  });
  if (missing) return 0;
  let turns = Number.POSITIVE_INFINITY;
  for (const [id, moles] of Object.entries(needs)) {
    if (id === AIR || moles <= 0) continue;
    turns = Math.min(turns, Math.max(0, contents[id] ?? 0) / moles);
  }
  const acid = -(change["H+"] ?? 0);
  if ((needsAcid || state.pH < ACIDIFIED) && acid > 0) turns = Math.min(turns, acidIn(contents, state) / acid);
  return Number.isFinite(turns) ? turns : 0;
}

/**
 * Acid that can be used up, mol. Where all that was poured in is used up and the mixture is acidic still, metal ions give it by hydrolysis,
 * as much as is needed.
 */
const acidIn = ({ "H+": acid = 0 }: Readonly<Components>, { pH }: RedoxState): number =>
  acid > ABSENT ? acid : pH < ACIDIFIED ? Number.POSITIVE_INFINITY : 0;

/** The solution after some turns: a species that is there shrinks or grows with its scarcest component; a new one takes all that is made. */
export function solutionAfter(
  now: Solution,
  state: RedoxState,
  equation: PairEquation,
  turns: number,
  halves: readonly HalfEquation[],
): Solution {
  const changed = new Map<string, number>();
  for (const { oxidised, reduced } of halves) {
    for (const part of [...oxidised, ...reduced]) {
      if (part.state === "dissolved" && part.id !== "H+" && part.id !== "OH-" && part.id !== "H2O") {
        changed.set(part.id, molalityAfter(part, now, state, equation, turns));
      }
    }
  }
  return { ...now, molality: { get: (id) => changed.get(id) ?? now.molality.get(id) } };
}

function molalityAfter(
  { id, components }: Part,
  now: Solution,
  { contents, waterKg }: RedoxState,
  { change }: PairEquation,
  turns: number,
): number {
  const present = now.molality.get(id) ?? 0;
  let growth = Number.POSITIVE_INFINITY;
  let made = Number.POSITIVE_INFINITY;
  for (const [component, count] of Object.entries(components)) {
    if (component === "H+" || component === "H2O" || count <= 0) continue;
    const before = contents[component] ?? 0;
    const after = Math.max(0, before + (change[component] ?? 0) * turns);
    if (before > ABSENT) growth = Math.min(growth, after / before);
    else made = Math.min(made, after / count / waterKg);
  }
  if (made < Number.POSITIVE_INFINITY) return made;
  return growth < Number.POSITIVE_INFINITY ? present * growth : present;
}
