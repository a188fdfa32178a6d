/**
 * The shortest order of work: which turn of which tube is begun next, until all are done.
 *
 * Method: every schedule can be written as its turns in the order of their beginning, and beginning each as early as that order allows
 * makes nothing later; so it is enough to try orders. A few rules of thumb make the first orders (first-orders.ts). Then depth first,
 * branch and bound: a branch is left when its least end is no better than the best found, when some other turn could be over before the
 * next one begins, or when the same tubes were as far at no later times before. Tubes with the same turns are interchangeable, and the
 * first of them goes first. The search is bounded by what it looks at, not by a clock: the same paper always gets the same plan.
 */
import type { Bar, Means, TubeWork } from "./bench-work.ts";
import { begun, firstOrder } from "./first-orders.ts";
import { leastEnd } from "./least-time.ts";
import { after, beginning, type Moment } from "./moment.ts";
import { layOut, type Workload } from "./workload.ts";

export interface Shortest {
  bars: Bar[];
  /** End of the last turn, quarter minutes. */
  end: number;
  /** No order of work ends earlier than this. Equal to `end` when the order is proved the shortest. */
  least: number;
}

/**
 * Turns looked at, over all moments, before the search gives up and leaves a gap. Quick: some tens of milliseconds, however long the paper,
 * for a page that answers at once. Patient: up to a few seconds, for a proof that is looked for once.
 */
export const LOOKS = { quick: 120_000, patient: 8_000_000 } as const;

/**
 * @param tubes in the order in which a reader would begin them; of equally short orders one near to it is kept
 * @throws RangeError when there is no burner, too few tubes, or no place in the rack, for something that needs them
 */
export function shortest(tubes: readonly TubeWork[], means: Means, mostLooks: number = LOOKS.quick): Shortest {
  refuseImpossible(tubes, means);
  const load = layOut(tubes, means);
  const start = beginning(load);
  const least = leastEnd(load, start);
  let best = firstOrder(load, start, least);
  const seen = new Map<string, number[][]>();
  const total = load.turns.length;
  let looks = 0;
  let all = true;

  const bars: Bar[] = [];
  const search = (moment: Moment, soFar: number): void => {
    if (bars.length === total) {
      if (soFar < best.end) best = { bars: [...bars], end: soFar };
      return;
    }
    const next = begun(load, moment).map((bar) => {
      const then = after(load, moment, bar);
      return { bar, then, least: leastEnd(load, then) };
    });
    looks += next.length * total;
    next.sort((a, b) => a.least - b.least);
    for (const { bar, then, least: promised } of next) {
      if (best.end === least) return;
      if (promised >= best.end) return;
      if (looks > mostLooks) {
        all = false;
        return;
      }
      if (known(seen, load, then)) continue;
      bars.push(bar);
      search(then, Math.max(soFar, bar.start + bar.work));
      bars.pop();
    }
  };
  if (best.end > least) search(start, 0);
  return { ...best, least: all ? best.end : least };
}

/** Moments of the same turns done that are kept for comparison; the latest of them, for those are the nearest. */
const KEPT = 64;

/** True when a moment with the same turns done was seen at which nothing was free later. */
function known(seen: Map<string, number[][]>, { tubes, groups }: Workload, moment: Moment): boolean {
  const { done, ready, now, hands, flames, stores } = moment;
  const times: number[] = [];
  let key = "";
  for (const group of groups) {
    // Tubes alike may change places: they are compared in the order of how far they are.
    const order = group.length === 1 ? group : group.toSorted((a, b) => done[a] - done[b] || ready[a] - ready[b]);
    for (const tube of order) {
      key += String.fromCharCode(done[tube]);
      times.push(done[tube] === tubes[tube].turns.length ? now : Math.max(ready[tube], now));
    }
  }
  for (const free of [hands, flames, ...stores]) for (const time of free) times.push(Math.max(time, now));
  const before = seen.get(key);
  if (before === undefined) {
    seen.set(key, [times]);
    return false;
  }
  if (before.some((other) => noLater(other, times))) return true;
  if (before.length === KEPT) before.shift();
  before.push(times);
  return false;
}

function noLater(these: readonly number[], those: readonly number[]): boolean {
  for (let i = 0; i < these.length; i++) if (these[i] > those[i]) return false;
  return true;
}

function refuseImpossible(tubes: readonly TubeWork[], means: Means): void {
  if (!(means.burners >= 1) && tubes.some(({ turns }) => turns.some(({ burner }) => burner))) {
    throw new RangeError(
      `order of work, burners: found ${means.burners}, expected at least 1, for some tests need a flame`,
    );
  }
  for (const { tubes: glass } of tubes) {
    if (!glass) continue;
    const there = means.tubes[glass.kind];
    if (there !== undefined && !(there >= glass.count)) {
      throw new RangeError(`order of work, ${glass.kind}s: found ${there}, expected at least ${glass.count}`);
    }
    if (means.places !== undefined && !(means.places >= glass.count)) {
      throw new RangeError(`order of work, rack places: found ${means.places}, expected at least ${glass.count}`);
    }
  }
}
