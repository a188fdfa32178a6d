/** A moment in the carrying out of tubes: how far each is, and when hands, burners and glass are free again. */
import type { Bar, Means, Rinsed, TubeWork } from "./bench-work.ts";

/** Nothing about the past of a moment matters beyond what stands here. Times in quarter minutes. */
export interface Moment {
  /** Number of turns done or begun, by tube. */
  done: number[];
  /** When each tube may have its next turn. */
  ready: number[];
  /** When each person, burner and tube of a limited kind is free, earliest first. */
  hands: number[];
  flames: number[];
  glass: Record<Rinsed, number[]>;
  /** Tubes of each kind used so far; beyond those there are, one has to be rinsed first. */
  used: Record<Rinsed, number>;
  /** No turn begins earlier than the one begun before it. */
  now: number;
}

const free = (count: number): number[] => Array.from({ length: count }, () => 0);

export function beginning(tubes: readonly TubeWork[], means: Means): Moment {
  const glass = (kind: Rinsed) => free(means.tubes[kind] ?? 0);
  return {
    done: tubes.map(() => 0),
    ready: tubes.map(() => 0),
    hands: free(means.people),
    flames: free(means.burners),
    glass: { "test-tube": glass("test-tube"), "boiling tube": glass("boiling tube") },
    used: { "test-tube": 0, "boiling tube": 0 },
    now: 0,
  };
}

/** The next turn of a tube at its earliest, or nothing when none is left or the order of the paper forbids it. */
export function nextBar(tubes: readonly TubeWork[], means: Means, moment: Moment, tube: number): Bar | undefined {
  const { part, turns, tubes: glass } = tubes[tube];
  const turn = moment.done[tube];
  if (turn === turns.length) return undefined;
  const { work, burner } = turns[turn];
  const first = turn === 0;
  if (first && means.partsInOrder && tubes.some((other, t) => other.part < part && moment.done[t] === 0)) {
    return undefined;
  }
  let start = Math.max(moment.now, moment.ready[tube], moment.hands[0]);
  if (burner) start = Math.max(start, moment.flames[0]);
  let rinsed = 0;
  const most = glass && means.tubes[glass.kind];
  if (first && glass && most !== undefined) {
    start = Math.max(start, moment.glass[glass.kind][glass.count - 1]);
    rinsed = Math.max(0, Math.min(glass.count, moment.used[glass.kind] + glass.count - most));
  }
  return { tube, turn, start, work: work + rinsed * means.rinse, rinsed: rinsed > 0 };
}

/** The moment after a turn is begun. */
export function after(tubes: readonly TubeWork[], means: Means, moment: Moment, bar: Bar): Moment {
  const { turns, tubes: glass } = tubes[bar.tube];
  const { burner, wait } = turns[bar.turn];
  const end = bar.start + bar.work;
  const next: Moment = {
    ...moment,
    done: changed(moment.done, bar.tube, bar.turn + 1),
    ready: changed(moment.ready, bar.tube, end + wait),
    hands: taken(moment.hands, bar.start, end),
    now: bar.start,
  };
  if (burner) next.flames = taken(moment.flames, bar.start, end);
  if (glass && means.tubes[glass.kind] !== undefined) {
    const { kind, count } = glass;
    let times = moment.glass[kind];
    if (bar.turn === 0) {
      for (let i = 0; i < count; i++) times = taken(times, bar.start, Number.POSITIVE_INFINITY);
      next.used = { ...moment.used, [kind]: moment.used[kind] + count };
    }
    if (bar.turn === turns.length - 1) {
      for (let i = 0; i < count; i++) times = given(times, end);
    }
    next.glass = { ...moment.glass, [kind]: times };
  }
  return next;
}

/** One that was free at `start` at the latest is free again at `end`: of several the latest, so that an early one stays for what comes. */
function taken(times: readonly number[], start: number, end: number): number[] {
  const at = times.findLastIndex((time) => time <= start);
  return [...times.slice(0, at), ...times.slice(at + 1), end].sort((a, b) => a - b);
}

/** One of those in use without end comes free. */
function given(times: readonly number[], end: number): number[] {
  return [...times.slice(0, -1), end].sort((a, b) => a - b);
}

const changed = (numbers: readonly number[], at: number, to: number): number[] =>
  numbers.map((number, index) => (index === at ? to : number));
