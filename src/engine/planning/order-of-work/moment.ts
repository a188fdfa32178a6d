/** A moment in the carrying out of tubes: how far each is, and when hands, burners and glass are free again. */
import type { Bar } from "./bench-work.ts";
import type { Workload } from "./workload.ts";

/** Nothing about the past of a moment matters beyond what stands here. Times in quarter minutes. */
export interface Moment {
  /** Number of turns done or begun, by tube. */
  done: readonly number[];
  /** When each tube may have its next turn. */
  ready: readonly number[];
  /** When each person, burner and thing of a limited store is free, earliest first. */
  hands: readonly number[];
  flames: readonly number[];
  stores: readonly (readonly number[])[];
  /** Taken of each store so far; beyond what there is, it has been used before. */
  used: readonly number[];
  /** The first part of which some tube is not begun. */
  part: number;
  /** No turn begins earlier than the one begun before it. */
  now: number;
}

const free = (count: number): number[] => Array.from({ length: count }, () => 0);

export function beginning(load: Workload): Moment {
  const { tubes, means, stores } = load;
  const done = free(tubes.length);
  return {
    done,
    ready: free(tubes.length),
    hands: free(means.people),
    flames: free(means.burners),
    stores: stores.map(({ size }) => free(size)),
    used: free(stores.length),
    part: partToBegin(load, done, 0),
    now: 0,
  };
}

function partToBegin({ byPart }: Workload, done: readonly number[], from: number): number {
  let part = from;
  while (part < byPart.length && byPart[part].every((tube) => done[tube] > 0)) part++;
  return part;
}

/** The next turn of a tube at its earliest, or nothing when none is left or the order of the paper forbids it. */
export function nextBar(load: Workload, moment: Moment, tube: number): Bar | undefined {
  const { part, turns } = load.tubes[tube];
  const turn = moment.done[tube];
  if (turn === turns.length) return undefined;
  if (turn === 0 && load.means.partsInOrder && part > moment.part) return undefined;
  let start = Math.max(moment.now, moment.ready[tube], moment.hands[0]);
  if (turns[turn].burner) start = Math.max(start, moment.flames[0]);
  let { work } = turns[turn];
  let rinsed = false;
  if (turn === 0) {
    for (const { store, count } of load.takes[tube]) {
      const { size, rinse } = load.stores[store];
      start = Math.max(start, moment.stores[store][count - 1]);
      const dirty = Math.min(count, moment.used[store] + count - size);
      if (rinse === 0 || dirty <= 0) continue;
      work += dirty * rinse;
      rinsed = true;
    }
  }
  return { tube, turn, start, work, rinsed };
}

/** The moment after a turn is begun. */
export function after(load: Workload, moment: Moment, bar: Bar): Moment {
  const { turns } = load.tubes[bar.tube];
  const { burner, wait } = turns[bar.turn];
  const end = bar.start + bar.work;
  const first = bar.turn === 0;
  const last = bar.turn === turns.length - 1;
  const done = changed(moment.done, bar.tube, bar.turn + 1);
  const takes = load.takes[bar.tube];
  const holds = takes.length > 0 && (first || last);
  return {
    done,
    ready: changed(moment.ready, bar.tube, end + wait),
    hands: taken(moment.hands, bar.start, end),
    flames: burner ? taken(moment.flames, bar.start, end) : moment.flames,
    stores: holds ? moved(moment.stores, takes, bar.start, first, last ? end : undefined) : moment.stores,
    used: holds && first ? counted(moment.used, takes) : moment.used,
    part: first ? partToBegin(load, done, moment.part) : moment.part,
    now: bar.start,
  };
}

/** The stores after a tube takes its share at `start`, or gives it back at `end`, or both. */
function moved(stores: Moment["stores"], takes: Workload["takes"][number], start: number, take: boolean, end?: number) {
  const next = stores.slice();
  for (const { store, count } of takes) {
    for (let i = 0; take && i < count; i++) next[store] = taken(next[store], start, Number.POSITIVE_INFINITY);
    for (let i = 0; end !== undefined && i < count; i++) next[store] = given(next[store], end);
  }
  return next;
}

function counted(used: readonly number[], takes: Workload["takes"][number]): number[] {
  const next = used.slice();
  for (const { store, count } of takes) next[store] += count;
  return next;
}

/** One that was free at `start` at the latest is free again at `end`: of several the latest, so that an early one stays for what comes. */
function taken(times: readonly number[], start: number, end: number): number[] {
  const next = times.slice();
  let at = next.length - 1;
  while (at > 0 && next[at] > start) at--;
  for (; at + 1 < next.length && next[at + 1] < end; at++) next[at] = next[at + 1];
  next[at] = end;
  return next;
}

/** One of those in use without end comes free. */
function given(times: readonly number[], end: number): number[] {
  const next = times.slice();
  let at = next.length - 1;
  for (; at > 0 && next[at - 1] > end; at--) next[at] = next[at - 1];
  next[at] = end;
  return next;
}

function changed(numbers: readonly number[], at: number, to: number): number[] {
  const next = numbers.slice();
  next[at] = to;
  return next;
}
