/** A time below which the rest of the work cannot be done: the proof that an order of work is the shortest. */
import type { Moment } from "./moment.ts";
import type { Workload } from "./workload.ts";

/**
 * Least end of everything from a moment on, quarter minutes. The greatest of these bounds:
 * - each tube's own time: its turns and waits one after the other;
 * - hands: all turns that still have at least so long to go after them, spread evenly over the people, and then that long;
 * - burners, likewise;
 * - tubes of a limited kind and places in the rack: each is held from the first turn to the end of the last;
 * - where parts keep their order: no tube of a part is begun before hands have got through the beginnings of the parts before it, and what
 *   the burner has to do for that part and all later ones comes after.
 * (Bounds for a machine with heads and tails: J. R. Jackson's rule of 1955, from memory.)
 */
export function leastEnd(load: Workload, moment: Moment): number {
  const { done, ready, hands, flames, now } = moment;
  const { tubes, rest, means } = load;
  let end = hands[hands.length - 1];
  const heads = means.partsInOrder ? headsOf(load, moment) : undefined;
  for (let tube = 0; tube < tubes.length; tube++) {
    const turn = done[tube];
    if (turn === rest[tube].length) continue;
    const begin = turn === 0 && heads ? heads[tubes[tube].part] : now;
    end = Math.max(end, Math.max(ready[tube], begin) + rest[tube][turn]);
  }
  end = Math.max(end, spread(load, moment, hands, false), spread(load, moment, flames, true));
  for (let store = 0; store < load.stores.length; store++) end = Math.max(end, held(load, moment, store));
  return heads ? Math.max(end, flamesInOrder(load, moment, heads)) : end;
}

/** The earliest a tube of each part can be begun; of parts that are all begun it says nothing. */
function headsOf({ byPart, tubes, means }: Workload, { done, hands, now, part: first }: Moment): number[] {
  const heads: number[] = [];
  let work = 0;
  let longest = 0;
  for (let part = 0; part < byPart.length; part++) {
    // When the first of this part begins, all hands but the one that begins it may still be at a beginning of a part before.
    const spare = (means.people - 1) * longest;
    heads.push(part < first ? now : filled(hands, now, Math.max(0, work - spare)));
    for (const tube of byPart[part]) {
      if (done[tube] > 0) continue;
      work += tubes[tube].turns[0].work;
      longest = Math.max(longest, tubes[tube].turns[0].work);
    }
  }
  return heads;
}

/** Part by part from the last: what the burner has to do for it and all after it, behind the earliest it can be begun. */
function flamesInOrder({ byPart, flame, means }: Workload, { done, part: first }: Moment, heads: readonly number[]) {
  let end = 0;
  let work = 0;
  let before = Number.POSITIVE_INFINITY;
  let tail = Number.POSITIVE_INFINITY;
  for (let part = byPart.length - 1; part >= first; part--) {
    for (const tube of byPart[part]) {
      const hot = flame[tube];
      if (!hot || done[tube] > 0) continue;
      work += hot.work;
      before = Math.min(before, hot.before);
      tail = Math.min(tail, hot.tail);
    }
    if (work > 0) end = Math.max(end, heads[part] + before + Math.ceil(work / means.burners) + tail);
  }
  return end;
}

/** All turns still to come (or those that need the burner), longest tail first, done by what is free at these times. */
function spread(load: Workload, { done, now, used }: Moment, free: readonly number[], burner: boolean): number {
  let work = 0;
  let end = 0;
  for (const one of load.turns) {
    if (one.turn < done[one.tube] || (burner && !one.burner)) continue;
    work += one.work;
    end = Math.max(end, filled(free, now, work) + one.tail);
  }
  // Which tube is rinsed hangs on the order, so this time has no tail of its own.
  const more = burner ? 0 : rinsing(load, done, used);
  return more > 0 ? Math.max(end, filled(free, now, work + more)) : end;
}

/** When so much work can be over, begun at `now` at the earliest by what is free at these times: the first that is free takes the most. */
function filled(free: readonly number[], now: number, work: number): number {
  let sum = 0;
  for (let count = 0; count < free.length; count++) {
    const next = Math.max(free[count], now);
    if (count > 0 && sum + work <= count * next) return Math.ceil((sum + work) / count);
    sum += next;
  }
  return Math.ceil((sum + work) / free.length);
}

/** When the last of a store can be given back: by those who hold some now, and by those who still have to take some. */
function held({ tubes, takes, rest }: Workload, { done, ready, now, stores }: Moment, store: number): number {
  const free = stores[store].filter((time) => time < Number.POSITIVE_INFINITY);
  let work = 0;
  for (let tube = 0; tube < tubes.length; tube++) {
    for (const take of takes[tube]) {
      if (take.store !== store || done[tube] === rest[tube].length) continue;
      if (done[tube] === 0) work += take.count * rest[tube][0];
      else for (let i = 0; i < take.count; i++) free.push(Math.max(ready[tube], now) + rest[tube][done[tube]]);
    }
  }
  return work > 0
    ? filled(
        free.sort((a, b) => a - b),
        now,
        work,
      )
    : 0;
}

/** Time that will go into rinsing: how many tubes of each kind are taken beyond those there are does not hang on the order. */
function rinsing({ stores, takes }: Workload, done: readonly number[], used: readonly number[]): number {
  let most = 0;
  for (let store = 0; store < stores.length; store++) {
    const { size, rinse } = stores[store];
    if (rinse === 0) continue;
    let toCome = 0;
    takes.forEach((all, tube) => {
      if (done[tube] === 0) for (const take of all) if (take.store === store) toCome += take.count;
    });
    most += Math.max(0, used[store] + toCome - Math.max(size, used[store])) * rinse;
  }
  return most;
}
