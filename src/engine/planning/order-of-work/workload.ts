/** The work of all tubes laid out for the search: whatever does not hang on how far the work has come is worked out here, once. */
import type { Means, Rinsed, TubeWork } from "./bench-work.ts";

/** A turn with what lies around it in its tube's own time, quarter minutes. */
export interface LaidTurn {
  tube: number;
  turn: number;
  work: number;
  burner: boolean;
  /** From the end of this turn to the end of the tube's last. */
  tail: number;
}

/** Something a tube holds from its first turn to the end of its last: a tube of a limited kind, a place in the rack. */
export interface Store {
  size: number;
  /** Time for each taken beyond those there are: a tube has to be rinsed, a place has not. */
  rinse: number;
}

export interface Workload {
  tubes: readonly TubeWork[];
  means: Means;
  stores: Store[];
  /** By tube: what it takes of which store. */
  takes: { store: number; count: number }[][];
  /** By tube: the first tube of its part with the same turns; tubes alike are interchangeable. */
  alike: number[];
  /** The same, tubes alike together. */
  groups: number[][];
  /** By tube and turn: time from the beginning of the turn to the end of the tube's last. */
  rest: number[][];
  /** All turns, those with the longest tail first. */
  turns: LaidTurn[];
  /** By tube: work with the burner in all, the least that comes before any of it, the least tail after any of it; absent when it stays cold. */
  flame: ({ work: number; before: number; tail: number } | undefined)[];
  /** Tubes by part, in the order of the paper; a place for every number up to the last part, some perhaps empty. */
  byPart: number[][];
}

const KINDS: readonly Rinsed[] = ["test-tube", "boiling tube"];

export function layOut(tubes: readonly TubeWork[], means: Means): Workload {
  const stores: Store[] = [];
  const takes: Workload["takes"] = tubes.map(() => []);
  const add = (store: Store, held: (tube: TubeWork) => boolean) => {
    tubes.forEach((tube, t) => {
      if (tube.tubes && held(tube)) takes[t].push({ store: stores.length, count: tube.tubes.count });
    });
    stores.push(store);
  };
  for (const kind of KINDS) {
    const size = means.tubes[kind];
    if (size !== undefined) add({ size, rinse: means.rinse }, (tube) => tube.tubes?.kind === kind);
  }
  if (means.places !== undefined) add({ size: means.places, rinse: 0 }, () => true);

  const rest = tubes.map(({ turns }) => {
    const times: number[] = [];
    for (let turn = turns.length - 1; turn >= 0; turn--) {
      const { work, wait } = turns[turn];
      times.unshift(turn === turns.length - 1 ? work : work + wait + times[0]);
    }
    return times;
  });
  const turns = tubes.flatMap((tube, t) =>
    tube.turns.map(({ work, burner }, turn) => ({ tube: t, turn, work, burner, tail: rest[t][turn] - work })),
  );
  const flame = tubes.map((_, t) => {
    const mine = turns.filter(({ tube, burner }) => tube === t && burner);
    if (mine.length === 0) return undefined;
    return {
      work: mine.reduce((sum, { work }) => sum + work, 0),
      before: Math.min(...mine.map(({ turn }) => rest[t][0] - rest[t][turn])),
      tail: Math.min(...mine.map(({ tail }) => tail)),
    };
  });
  const byPart: number[][] = Array.from({ length: Math.max(-1, ...tubes.map(({ part }) => part)) + 1 }, () => []);
  tubes.forEach(({ part }, t) => {
    byPart[part].push(t);
  });
  const signs = tubes.map(({ part, turns, tubes: glass }) =>
    JSON.stringify([part, glass, turns.map(({ work, wait, burner }) => [work, wait, burner])]),
  );
  const alike = signs.map((sign) => signs.indexOf(sign));
  return {
    tubes,
    means,
    stores,
    takes,
    alike,
    groups: [...new Set(alike)].map((first) => alike.flatMap((one, tube) => (one === first ? [tube] : []))),
    rest,
    turns: turns.sort((a, b) => b.tail - a.tail),
    flame,
    byPart,
  };
}
