/**
 * Whether all work can end by a given time, as an integer programme for a general-purpose solver, written apart from the engine.
 *
 * For each turn of each tube and each moment a variable is one when the turn is begun by then, and nought before ("step" variables, as in
 * A. A. B. Pritsker and L. J. Watters, A zero-one programming approach to scheduling with limited resources, RAND RM-5561-PR, 1968; from
 * memory). Every order of work can be drawn forward until each turn begins at the start or where something ends, so moments may lie as far
 * apart as the greatest common divisor of all times. Tubes with the same turns and glass are interchangeable: the first begun can always
 * be the first to go on. Where parts keep their order it is known from the start which tubes have to be rinsed, for those of a part are
 * alike; elsewhere a beginning comes in several ways, by how many tubes it rinses, and none is rinsed while a clean one is left.
 */
import type load from "highs";
import type { Bar, Means, TubeWork } from "../../../../src/engine/planning/order-of-work/bench-work.ts";
import { Programme, type Sum, times } from "./programme.ts";

export type Highs = Awaited<ReturnType<typeof load>>;

/** What suits large programmes that cannot be met: nothing goes into finding orders by rules of thumb, nor into making the programme smaller. */
export const FOR_A_PROOF = {
  presolve: "off",
  mip_detect_symmetry: false,
  mip_heuristic_effort: 0,
  mip_heuristic_run_rins: false,
  mip_heuristic_run_rens: false,
  mip_heuristic_run_root_reduced_cost: false,
  mip_heuristic_run_zi_round: false,
  mip_heuristic_run_shifting: false,
  mip_heuristic_run_feasibility_jump: false,
} as const;

/**
 * @param tubes in the order of their parts
 * @throws Error when the solver comes to no answer
 */
export function canEndBy(
  highs: Highs,
  tubes: readonly TubeWork[],
  means: Means,
  horizon: number,
  options: Options = {},
): boolean {
  return isMet(highs, programmeOf(tubes, means, horizon), options);
}

/** Whether the programme allows just this order, so that it forbids no more than it should. */
export function allows(highs: Highs, tubes: readonly TubeWork[], means: Means, { bars, end }: Order): boolean {
  return isMet(highs, programmeOf(tubes, means, end, bars), {});
}

type Options = NonNullable<Parameters<Highs["solve"]>[1]>;
type Order = { bars: readonly Bar[]; end: number };

function isMet(highs: Highs, programme: string, options: Options): boolean {
  const { Status } = highs.solve(programme, options);
  if (Status !== "Optimal" && Status !== "Infeasible") throw new Error(`the integer programme ended ${Status}`);
  return Status === "Optimal";
}

const KINDS = ["test-tube", "boiling tube"] as const;

/** A turn in the programme, times in moments. Each way of doing it rinses so many tubes first. */
interface Placed {
  ways: { dirty: number; work: number }[];
  wait: number;
  burner: boolean;
  earliest: number;
  /** The last moment for it when it rinses nothing. */
  latest: number;
}

interface Tube {
  turns: Placed[];
  glass: TubeWork["tubes"];
  /** The tube with the same turns and glass that goes before it, and the one that is begun before it. */
  alike: number;
  follows: number;
}

function programmeOf(tubes: readonly TubeWork[], means: Means, horizon: number, order?: readonly Bar[]): string {
  const moment = [...tubes.flatMap(({ turns }) => turns.flatMap(({ work, wait }) => [work, wait])), means.rinse].reduce(
    greatestDivisor,
    0,
  );
  const end = Math.floor(horizon / moment);
  const all = laid(tubes, means, moment, end);
  const programme = new Programme();

  /** How many of these ways of a turn are begun by a moment. */
  const begun = (tube: number, turn: number, at: number, wanted?: number): Sum => {
    const { ways, earliest, latest } = all[tube].turns[turn];
    return ways.flatMap(({ dirty, work }): Sum => {
      const last = latest - (work - ways[0].work);
      if (at < earliest || last < earliest || (wanted !== undefined && dirty !== wanted)) return [];
      if (ways.length === 1 && at >= last) return [[1]];
      return [[1, `x${tube}_${turn}_${dirty}_${Math.min(at, last)}`]];
    });
  };
  const over = (tube: number, turn: number, at: number): Sum =>
    all[tube].turns[turn].ways.flatMap(({ dirty, work }) => begun(tube, turn, at - work, dirty));

  for (let at = 0; at <= end; at++) {
    all.forEach(({ turns, alike, follows }, tube) => {
      turns.forEach(({ ways }, turn) => {
        for (const { dirty } of ways)
          programme.row(begun(tube, turn, at - 1, dirty), "<=", begun(tube, turn, at, dirty));
        if (turn > 0) programme.row(begun(tube, turn, at), "<=", over(tube, turn - 1, at - turns[turn - 1].wait));
        const first = turn === 0 ? follows : alike;
        if (first >= 0) programme.row(begun(tube, turn, at), "<=", begun(first, turn, at));
      });
    });
    const busy = (some: (turn: Placed) => boolean, there: number) => {
      const mine = all.flatMap(({ turns }, tube) => turns.flatMap((one, turn) => (some(one) ? [{ tube, turn }] : [])));
      programme.row(
        mine.flatMap(({ tube, turn }) => begun(tube, turn, at)),
        "<=",
        [[there], ...mine.flatMap(({ tube, turn }) => over(tube, turn, at))],
      );
    };
    busy(() => true, means.people);
    busy(({ burner }) => burner, means.burners);
    for (const kind of [...KINDS, undefined]) {
      const there = kind ? means.tubes[kind] : means.places;
      const mine = all.flatMap(({ glass, turns }, tube) =>
        glass && (!kind || glass.kind === kind) ? [{ tube, last: turns.length - 1, count: glass.count }] : [],
      );
      if (there === undefined) continue;
      programme.row(
        mine.flatMap(({ tube, count }) => times(begun(tube, 0, at), count)),
        "<=",
        [[there], ...mine.flatMap(({ tube, last, count }) => times(over(tube, last, at), count))],
      );
    }
    for (const kind of means.partsInOrder ? [] : KINDS) cleanFirst(kind, at);
  }
  for (const [tube, { turns }] of all.entries()) {
    for (const turn of turns.keys()) {
      programme.row(begun(tube, turn, end), "=", [[1]]);
      if (!order) continue;
      const start = inTurn(tubes, order, tube, turn) / moment;
      programme.row(begun(tube, turn, start), "=", [[1]]);
      programme.row(begun(tube, turn, start - 1), "=", []);
    }
  }
  return programme.text();

  /** Whatever is rinsed by a moment, all clean ones are gone by then. */
  function cleanFirst(kind: (typeof KINDS)[number], at: number) {
    const there = means.tubes[kind];
    const taken = all.flatMap(({ glass, turns }, tube) =>
      glass?.kind === kind ? turns[0].ways.map(({ dirty }) => ({ tube, dirty, clean: glass.count - dirty })) : [],
    );
    const most = taken.reduce((sum, { dirty }) => sum + dirty, 0);
    if (there === undefined || most === 0) return;
    const sum = (of: "dirty" | "clean") => taken.flatMap((one) => times(begun(one.tube, 0, at, one.dirty), one[of]));
    const gone = `gone_${kind[0]}_${at}`;
    programme.row(sum("clean"), "<=", [[there]]);
    programme.row([[there, gone]], "<=", sum("clean"));
    programme.row(sum("dirty"), "<=", [[most, gone]]);
  }
}

const greatestDivisor = (a: number, b: number): number => (b === 0 ? a : greatestDivisor(b, a % b));

/** What turns take and need: tubes with the same may change places. */
const signOf = ({ turns, tubes }: TubeWork): string =>
  JSON.stringify([tubes, turns.map(({ work, wait, burner }) => [work, wait, burner])]);

/** When an order begins a turn of this tube, if of tubes that may change places the first begun is the first to go on. */
function inTurn(tubes: readonly TubeWork[], order: readonly Bar[], tube: number, turn: number): number {
  const mine = tubes.flatMap((other, index) => (signOf(other) === signOf(tubes[tube]) ? [index] : []));
  const starts = order.filter((bar) => bar.turn === turn && mine.includes(bar.tube)).map(({ start }) => start);
  return starts.sort((a, b) => a - b)[mine.indexOf(tube)];
}

/** The tubes as the programme sees them, those of a part in the order in which they are begun. */
function laid(tubes: readonly TubeWork[], means: Means, moment: number, end: number): Tube[] {
  const signs = tubes.map(signOf);
  const taken = { "test-tube": 0, "boiling tube": 0 };
  return tubes.map(({ turns, tubes: glass }, tube) => {
    const there = glass && means.tubes[glass.kind];
    const limited = glass !== undefined && there !== undefined && means.rinse > 0;
    let rinsed = Array.from({ length: limited ? glass.count + 1 : 1 }, (_, dirty) => dirty);
    if (limited && means.partsInOrder) {
      rinsed = [Math.min(glass.count, Math.max(0, taken[glass.kind] + glass.count - there))];
      taken[glass.kind] += glass.count;
    }
    const lasting = (some: typeof turns) => some.reduce((sum, { work, wait }) => sum + work + wait, 0);
    const alike = signs.lastIndexOf(signs[tube], tube - 1);
    return {
      glass,
      alike: tube > 0 ? alike : -1,
      follows: means.partsInOrder || tube === 0 ? tube - 1 : alike,
      turns: turns.map(({ work, wait, burner }, k) => {
        const more = (dirty: number) => (dirty * means.rinse) / moment;
        const before = k > 0 ? more(rinsed[0]) : 0;
        return {
          ways:
            k === 0
              ? rinsed.map((dirty) => ({ dirty, work: work / moment + more(dirty) }))
              : [{ dirty: 0, work: work / moment }],
          wait: wait / moment,
          burner,
          earliest: lasting(turns.slice(0, k)) / moment + before,
          latest: end - lasting(turns.slice(k)) / moment - (k === 0 ? more(rinsed[0]) : 0),
        };
      }),
    };
  });
}
