/** Pouring in portions: the tube comes to rest after each, so that what comes and goes on the way is seen. */
import { VISIBILITY } from "../constants/visibility.ts";
import { nothingForms } from "../equilibrium/between.ts";
import type { EquilibriumResult, Solver } from "../equilibrium/solve.ts";
import type { Components } from "./composition.ts";
import { mayChange } from "./redox/redox-changes.ts";
import { look } from "./sight.ts";
import { BUBBLING, copyOfTube, pour, settle, type Tube } from "./tube.ts";

/** Gases that count: those that bubble, and sulfur dioxide from where it is noticed. */
const GASES = { ...BUBBLING, "SO2(g)": VISIBILITY.sulfurDioxide.value };

/**
 * How far below saturation (log10) everything must stay between two looks before what lies between is passed over. It leaves room for
 * dilution, which an activity may fall and rise again by, and for constants that are a little other. Our choice.
 */
const FAR = 1;
/** Part by which a solid may become more or less, and change of pH where couples meet, before what lies between is looked at. Our choices. */
const NO_NEWS = { solid: 0.05, pH: 0.5 };

/**
 * Pours portions of a liquid (cm3) into a tube. Where no gas leaves and nothing changes its oxidation state, a mixture is the same
 * whatever portions it was poured in: then looks are taken ever farther apart while nothing happens, and what lies between two of them is
 * looked at only if something could happen there. What could is judged by activities between those of the two looks, an assumption (see
 * between.ts) that FAR and the rule on pH buy off in part: how little is lost is measured against
 * half-drops (tests/engine/bench/portions.test.ts), not proved.
 * @param watch told of the tube at every look, and how many portions are in it by then
 * @throws NoEquilibrium when the solver gives up
 */
export function pourPortions(
  tube: Tube,
  perDm3: Readonly<Components>,
  portions: readonly number[],
  solve: Solver,
  watch: (result: EquilibriumResult, poured: number) => void,
): void {
  const last = portions.length;
  const fill = (filled: Tube, from: number, to: number): Tube => {
    filled.pouring = to < last;
    for (const cm3 of portions.slice(from, to)) pour(filled, perDm3, cm3);
    settle(filled, solve);
    return filled;
  };
  const all = { ...tube.contents, ...perDm3 };
  const couples = mayChange({ contents: all, air: tube.air });
  let gone = gasFrom(tube);
  /** Whether something has happened since the last look that hangs on how the liquid was poured: it may go on with every portion. */
  const isAnother = (filled: Tube): boolean => (couples && filled.reactions.size > 0) || gasFrom(filled) !== gone;
  /** Goes on to portion `to`; `there` is the tube as it will be then. */
  const pass = (from: number, to: number, there: Tube): void => {
    if (to - from === 1 || nothingBetween(tube, there, couples)) {
      Object.assign(tube, there);
      watch(there.result as EquilibriumResult, to);
      return;
    }
    const middle = (from + to) >> 1;
    pass(from, middle, fill(copyOfTube(tube), from, middle));
    pass(middle, to, isAnother(tube) ? fill(copyOfTube(tube), middle, to) : there);
  };
  const leaps = tube.opened.length === 0 && !isAnother(tube);
  let stride = 1;
  for (let done = 0; done < last; ) {
    const to = leaps ? Math.min(done + stride, last) : done + 1;
    const before = tube.result;
    const there = fill(to - done === 1 ? tube : copyOfTube(tube), done, to);
    if (to - done > 1 && isAnother(there)) {
      stride = 1;
      continue;
    }
    pass(done, to, there);
    stride = isAnother(tube) || isNews(before, tube.result) ? 1 : stride * 2;
    gone = gasFrom(tube);
    done = to;
  }
}

/** All gas that has left a tube, mol. */
function gasFrom({ left }: Tube): number {
  let sum = 0;
  for (const mol of left.values()) sum += mol;
  return sum;
}

function nothingBetween({ result: one }: Tube, { result: other }: Tube, couples: boolean): boolean {
  if (one === undefined || other === undefined || isNews(one, other)) return false;
  if (couples && Math.abs(one.pH - other.pH) > NO_NEWS.pH) return false;
  return nothingForms(one, other, GASES, FAR) && look(one).solution === look(other).solution;
}

/** Whether a solid has come or gone, or become plainly more or less. */
function isNews(one: EquilibriumResult | undefined, other: EquilibriumResult | undefined): boolean {
  if (!one || !other || one.phases.size !== other.phases.size) return true;
  for (const [id, mol] of one.phases) {
    const now = other.phases.get(id) ?? 0;
    if (Math.abs(now - mol) > NO_NEWS.solid * Math.max(now, mol)) return true;
  }
  return false;
}
