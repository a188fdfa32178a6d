/**
 * The shortest order of work: which turn of which tube is begun next, until all are done.
 *
 * Method: every schedule can be written as its turns in the order of their beginning, and beginning each as early as that order allows
 * makes nothing later; so it is enough to try orders (depth first, branch and bound). A branch is left when its least end is no better than
 * the best found, when some other turn could be over before the next one begins, or when the same tubes were as far at no later times before.
 * Tubes with the same turns are interchangeable, and the first of them goes first.
 */
import type { Bar, Means, TubeWork } from "./bench-work.ts";
import { leastEnd } from "./least-time.ts";
import { after, beginning, type Moment, nextBar } from "./moment.ts";

export interface Shortest {
  bars: Bar[];
  /** End of the last turn, quarter minutes. */
  end: number;
  /** No order of work ends earlier than this. Equal to `end` when the order is proved the shortest. */
  least: number;
}

/** Moments looked at before the search gives up and leaves a gap: a fraction of a second. */
const MOST_MOMENTS = 20_000;

/**
 * @param tubes in the order in which a reader would begin them; of equally short orders the one nearest to it is kept
 * @throws RangeError when there is no burner, or too few tubes, for something that needs them
 */
export function shortest(tubes: readonly TubeWork[], means: Means, mostMoments = MOST_MOMENTS): Shortest {
  refuseImpossible(tubes, means);
  const start = beginning(tubes, means);
  let best = inTurn(tubes, means, start);
  const least = leastEnd(tubes, means, start);
  const alike = tubes.map((tube) => tubes.findIndex((other) => other.part === tube.part && sameTurns(other, tube)));
  const seen = new Map<string, number[][]>();
  let moments = 0;
  let all = true;

  const search = (moment: Moment, bars: Bar[]): void => {
    if (best.end === least) return;
    if (++moments > mostMoments) {
      all = false;
      return;
    }
    const next = begun(tubes, means, moment, alike);
    if (next.length === 0) {
      const end = endOf(bars);
      if (end < best.end && bars.length === total) best = { bars, end };
      return;
    }
    for (const bar of next) {
      const then = after(tubes, means, moment, bar);
      if (leastEnd(tubes, means, then) >= best.end) continue;
      if (known(seen, tubes, alike, then)) continue;
      search(then, [...bars, bar]);
      if (best.end === least) return;
    }
  };
  const total = tubes.reduce((sum, { turns }) => sum + turns.length, 0);
  search(start, []);
  return { ...best, least: all ? best.end : least };
}

const endOf = (bars: readonly Bar[]): number => bars.reduce((end, bar) => Math.max(end, bar.start + bar.work), 0);

/** The first order: at each moment the turn that can begin earliest; of several the one of the earliest part, then test, then sample. */
function inTurn(tubes: readonly TubeWork[], means: Means, start: Moment): { bars: Bar[]; end: number } {
  const bars: Bar[] = [];
  let moment = start;
  for (;;) {
    const [first] = begun(tubes, means, moment);
    if (!first) return { bars, end: endOf(bars) };
    bars.push(first);
    moment = after(tubes, means, moment, first);
  }
}

/** The turns that may be begun next, in the order in which they are tried. `alike[t]`: the first tube with the same turns as t. */
function begun(tubes: readonly TubeWork[], means: Means, moment: Moment, alike?: readonly number[]): Bar[] {
  const all = tubes.flatMap((_, tube) => {
    const bar = nextBar(tubes, means, moment, tube);
    return bar && bar.start < Number.POSITIVE_INFINITY ? [bar] : [];
  });
  const distinct = alike
    ? all.filter(
        ({ tube, turn }) =>
          !all.some(
            (other) =>
              other.tube < tube &&
              alike[other.tube] === alike[tube] &&
              other.turn === turn &&
              moment.ready[other.tube] <= Math.max(moment.ready[tube], moment.now),
          ),
      )
    : all;
  // A turn that takes no scarce tube and is over before another begins may as well come first.
  const over = distinct
    .filter(({ tube, turn }) => turn > 0 || !tubes[tube].tubes || means.tubes[tubes[tube].tubes.kind] === undefined)
    .reduce((least, { start, work }) => Math.min(least, start + work), Number.POSITIVE_INFINITY);
  return distinct
    .filter(({ start }) => start < over)
    .sort((a, b) => a.start - b.start || tubes[a.tube].part - tubes[b.tube].part || a.turn - b.turn || a.tube - b.tube);
}

const sameTurns = (a: TubeWork, b: TubeWork): boolean =>
  JSON.stringify([a.turns, a.tubes]) === JSON.stringify([b.turns, b.tubes]);

/** True when a moment with the same turns done was seen at which nothing was free later. */
function known(seen: Map<string, number[][]>, tubes: readonly TubeWork[], alike: readonly number[], moment: Moment) {
  const { done, ready, now, hands, flames, glass } = moment;
  const order = tubes.map((_, t) => t).sort((a, b) => alike[a] - alike[b] || done[a] - done[b] || ready[a] - ready[b]);
  const key = order.map((t) => done[t]).join();
  const times = [
    ...order.map((t) => (done[t] === tubes[t].turns.length ? 0 : ready[t])),
    ...hands,
    ...flames,
    ...glass["test-tube"],
    ...glass["boiling tube"],
  ].map((time) => Math.max(time, now));
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
    const there = glass && means.tubes[glass.kind];
    if (glass && there !== undefined && there < glass.count) {
      throw new RangeError(`order of work, ${glass.kind}s: found ${there}, expected at least ${glass.count}`);
    }
  }
}
