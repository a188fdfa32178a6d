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

/** Turns looked at, over all moments, before the search gives up and leaves a gap: some tens of milliseconds, however long the paper. */
const MOST_LOOKS = 120_000;

/**
 * @param tubes in the order in which a reader would begin them; of equally short orders one near to it is kept
 * @throws RangeError when there is no burner, too few tubes, or no place in the rack, for something that needs them
 */
export function shortest(tubes: readonly TubeWork[], means: Means, mostLooks = MOST_LOOKS): Shortest {
  refuseImpossible(tubes, means);
  const load = layOut(tubes, means);
  const start = beginning(load);
  const least = leastEnd(load, start);
  let best = firstOrder(load, start, least);
  const seen = new Map<string, number[][]>();
  const total = load.turns.length;
  let looks = 0;
  let all = true;

  const search = (moment: Moment, bars: readonly Bar[], soFar: number): void => {
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
      search(then, [...bars, bar], Math.max(soFar, bar.start + bar.work));
    }
  };
  if (best.end > least) search(start, [], 0);
  return { ...best, least: all ? best.end : least };
}

/** True when a moment with the same turns done was seen at which nothing was free later. */
function known(seen: Map<string, number[][]>, { tubes, alike }: Workload, moment: Moment): boolean {
  const { done, ready, now, hands, flames, stores } = moment;
  const order = tubes.map((_, t) => t).sort((a, b) => alike[a] - alike[b] || done[a] - done[b] || ready[a] - ready[b]);
  const key = order.map((t) => done[t]).join();
  const times = [...order.map((t) => (done[t] === tubes[t].turns.length ? 0 : ready[t])), ...hands, ...flames];
  for (const store of stores) times.push(...store);
  for (let i = 0; i < times.length; i++) times[i] = Math.max(times[i], now);
  const before = seen.get(key) ?? [];
  if (before.some((other) => other.every((time, i) => time <= times[i]))) return true;
  seen.set(key, [...before.filter((other) => !other.every((time, i) => time >= times[i])), times]);
  return false;
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
