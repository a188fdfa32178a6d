/** Orders made by rules of thumb: a good one to begin with leaves the search little to do, and often nothing. */
import type { Bar } from "./bench-work.ts";
import { after, type Moment, nextBar } from "./moment.ts";
import type { Workload } from "./workload.ts";

/** The turns that may be begun next, those that can begin earliest first; of several the one of the earliest part, then test, then sample. */
export function begun(load: Workload, moment: Moment): Bar[] {
  const { tubes, takes, stores, alike } = load;
  const all: Bar[] = [];
  let over = Number.POSITIVE_INFINITY;
  for (let tube = 0; tube < tubes.length; tube++) {
    if (moment.done[tube] === tubes[tube].turns.length || waitsForOneAlike(alike, moment, tube)) continue;
    const bar = nextBar(load, moment, tube);
    if (!bar || bar.start === Number.POSITIVE_INFINITY) continue;
    all.push(bar);
    // A turn that takes nothing scarce and is over before another begins may as well come first.
    if (bar.turn > 0 || takes[tube].length === 0 || stores.length === 0) over = Math.min(over, bar.start + bar.work);
  }
  return all
    .filter(({ start }) => start < over)
    .sort((a, b) => a.start - b.start || tubes[a.tube].part - tubes[b.tube].part || a.turn - b.turn || a.tube - b.tube);
}

/** True when a tube alike that stands before this one is as far and no later ready: it goes first. */
function waitsForOneAlike(alike: readonly number[], { done, ready, now }: Moment, tube: number): boolean {
  for (let other = alike[tube]; other < tube; other++) {
    if (alike[other] === alike[tube] && done[other] === done[tube] && ready[other] <= Math.max(ready[tube], now)) {
      return true;
    }
  }
  return false;
}

/** How soon a turn wants to be begun among those that could begin at the same moment: the least first. */
type Rule = (load: Workload, bar: Bar) => number;

const restOf: Rule = ({ rest }, { tube, turn }) => rest[tube][turn];
const isHot = ({ tubes }: Workload, { tube, turn }: Bar) => (tubes[tube].turns[turn].burner ? 1 : 0);
/** Time of the burner that this tube still asks for. */
const hotRest: Rule = ({ flame, tubes }, { tube, turn }) =>
  flame[tube] ? tubes[tube].turns.slice(turn).reduce((sum, one) => sum + (one.burner ? one.work : 0), 0) : 0;

/** In the order of the paper; longest rest first; every tube begun first; burner never idle; and mixtures. The first of the best is kept. */
const RULES: readonly Rule[] = [
  () => 0,
  (load, bar) => -restOf(load, bar),
  (load, bar) => (bar.turn === 0 ? -1000 : 0) - restOf(load, bar),
  (load, bar) => -1000 * isHot(load, bar) - restOf(load, bar),
  (load, bar) => -1000 * hotRest(load, bar) - restOf(load, bar),
  (load, bar) => -1000 * isHot(load, bar) - (bar.turn === 0 ? 500 : 0) - restOf(load, bar),
];

/** The shortest order that one of the rules gives. @param least where no order can be shorter, and the rest need not be tried */
export function firstOrder(load: Workload, start: Moment, least: number): { bars: Bar[]; end: number } {
  let best = inTurn(load, start, RULES[0]);
  for (const rule of RULES.slice(1)) {
    if (best.end === least) break;
    const other = inTurn(load, start, rule);
    if (other.end < best.end) best = other;
  }
  return best;
}

/** At each moment the turn that can begin earliest; of several the one the rule puts first. */
function inTurn(load: Workload, start: Moment, rule: Rule): { bars: Bar[]; end: number } {
  const bars: Bar[] = [];
  let moment = start;
  let end = 0;
  for (;;) {
    const next = begun(load, moment);
    if (next.length === 0) return { bars, end };
    const soonest = next.filter(({ start }) => start === next[0].start);
    const wants = soonest.map((bar) => rule(load, bar));
    const first = soonest[wants.indexOf(Math.min(...wants))];
    bars.push(first);
    end = Math.max(end, first.start + first.work);
    moment = after(load, moment, first);
  }
}
