/** A time below which the rest of the work cannot be done: the proof that an order of work is the shortest. */
import type { Means, TubeWork } from "./bench-work.ts";
import type { Moment } from "./moment.ts";

/** A turn still to come: how long it keeps hands (or a burner) busy, and how much of its tube's time must follow it. */
interface Load {
  work: number;
  tail: number;
}

/**
 * Least end of everything from a moment on, quarter minutes. The greatest of three bounds:
 * - each tube's own time: its turns and waits one after the other;
 * - hands: all turns that still have at least so long to go after them, spread evenly over the people, and then that long;
 * - burners, likewise.
 * (Bounds for a machine with tails: J. R. Jackson's rule of 1955, from memory.)
 */
export function leastEnd(tubes: readonly TubeWork[], means: Means, moment: Moment): number {
  const hands: Load[] = [];
  const flames: Load[] = [];
  let end = 0;
  tubes.forEach(({ turns }, tube) => {
    let tail = 0;
    for (let turn = turns.length - 1; turn >= moment.done[tube]; turn--) {
      const { work, wait, burner } = turns[turn];
      tail += turn === turns.length - 1 ? 0 : wait;
      hands.push({ work, tail });
      if (burner) flames.push({ work, tail });
      tail += work;
    }
    if (tail > 0) end = Math.max(end, Math.max(moment.ready[tube], moment.now) + tail);
  });
  for (const time of moment.hands) end = Math.max(end, time);
  return Math.max(
    end,
    spread(hands, moment.hands, moment.now, rinsing(tubes, means, moment)),
    spread(flames, moment.flames, moment.now, 0),
  );
}

/** Time that will go into rinsing: how many tubes of each kind are taken beyond those there are does not hang on the order. */
function rinsing(tubes: readonly TubeWork[], means: Means, moment: Moment): number {
  let most = 0;
  for (const kind of ["test-tube", "boiling tube"] as const) {
    const there = means.tubes[kind];
    if (there === undefined) continue;
    const toCome = tubes.reduce(
      (sum, { tubes: glass }, tube) => sum + (glass?.kind === kind && moment.done[tube] === 0 ? glass.count : 0),
      0,
    );
    const used = moment.used[kind];
    most += Math.max(0, used + toCome - Math.max(there, used)) * means.rinse;
  }
  return most;
}

/** @param more work without a tail, besides the loads */
function spread(loads: Load[], free: readonly number[], now: number, more: number): number {
  if (loads.length === 0 && more === 0) return 0;
  const since = free.reduce((sum, time) => sum + Math.max(time, now), 0);
  loads.sort((a, b) => b.tail - a.tail);
  let work = 0;
  let end = 0;
  for (const load of loads) {
    work += load.work;
    end = Math.max(end, Math.ceil((since + work) / free.length) + load.tail);
  }
  return Math.max(end, Math.ceil((since + work + more) / free.length));
}
