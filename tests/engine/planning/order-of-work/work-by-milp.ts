/**
 * Whether all work can end by a given time, as an integer programme for a general-purpose solver, written apart from the engine: a
 * variable for each moment counts how many tubes of a part begin a turn then. Tubes of a part are alike, and the first begun can always
 * be the first to go on. Where used tubes must be rinsed, a beginning is counted by how many it rinses, and none is rinsed while a clean
 * one is left.
 */
import type load from "highs";
import type { Means, TubeWork } from "../../../../src/engine/planning/order-of-work/bench-work.ts";

export type Highs = Awaited<ReturnType<typeof load>>;

/** @throws Error when the solver comes to no answer */
export function canEndBy(highs: Highs, tubes: readonly TubeWork[], means: Means, horizon: number): boolean {
  const model = modelOf(tubes, means, horizon);
  if (model === undefined) return false;
  // Its presolve has been seen to fail on what cannot be done.
  const { Status } = highs.solve(model.text, { presolve: "off" });
  if (Status !== "Optimal" && Status !== "Infeasible") throw new Error(`the integer programme ended ${Status}`);
  return Status === "Optimal";
}

/** How many whole numbers the programme asks for: what decides whether the solver comes to an end. */
export function sizeOf(tubes: readonly TubeWork[], means: Means, horizon: number): number {
  return modelOf(tubes, means, horizon)?.integers ?? 0;
}

/** A way of doing a turn: its work with so many tubes rinsed first, and a variable for each moment at which it may begin. */
interface Way {
  dirty: number;
  work: number;
  starts: { t: number; x: string }[];
}

interface Counted {
  part: number;
  k: number;
  count: number;
  wait: number;
  burner: boolean;
  ways: Way[];
}

const begunBy = (ways: readonly Way[], moment: number) =>
  ways.flatMap(({ starts }) => starts.flatMap(({ t, x }) => (t <= moment ? [x] : [])));
/** Begun and over, and left alone for `wait`, by a moment. */
const overBy = (ways: readonly Way[], moment: number, wait = 0) =>
  ways.flatMap((way) => begunBy([way], moment - way.work - wait));
const runningAt = (ways: readonly Way[], moment: number) =>
  ways.flatMap(({ starts, work }) => starts.flatMap(({ t, x }) => (t <= moment && moment < t + work ? [x] : [])));
const allOf = (xs: readonly string[], times = 1) => xs.map((x) => `${times} ${x}`);

/** In the CPLEX LP format; undefined when some tube alone takes longer. */
function modelOf(tubes: readonly TubeWork[], means: Means, horizon: number) {
  const parts = [...new Set(tubes.map(({ part }) => part))].map((part) => {
    const mine = tubes.filter((tube) => tube.part === part);
    const { turns, tubes: glass } = mine[0];
    const limited = glass && means.rinse > 0 && means.tubes[glass.kind] !== undefined;
    return { part, count: mine.length, turns, glass, mostDirty: limited ? glass.count : 0 };
  });
  const rows: string[] = [];
  const bounds: string[] = [];
  const integers: string[] = [];
  const whole = (name: string, most: number) => {
    bounds.push(`0 <= ${name} <= ${most}`);
    integers.push(name);
    return name;
  };
  const row = (plus: string[], minus: string[], relation: string) => {
    if (plus.length + minus.length > 0)
      rows.push(`${plus.map((x) => ` + ${x}`).join("")}${minus.map((x) => ` - ${x}`).join("")} ${relation}`);
  };

  const turns = parts.flatMap(({ part, count, turns, mostDirty }): Counted[] => {
    const lasts = (some: typeof turns) => some.reduce((sum, { work, wait }) => sum + work + wait, 0);
    return turns.map(({ work, wait, burner }, k) => {
      const ways = Array.from({ length: k === 0 ? mostDirty + 1 : 1 }, (_, dirty): Way => {
        const more = dirty * means.rinse;
        const starts: Way["starts"] = [];
        for (let t = lasts(turns.slice(0, k)); t <= horizon - lasts(turns.slice(k)) - more; t++)
          starts.push({ t, x: whole(`x${part}_${k}_${dirty}_${t}`, count) });
        return { dirty, work: work + more, starts };
      });
      return { part, k, count, wait, burner, ways };
    });
  });
  if (turns.some(({ ways }) => ways[0].starts.length === 0)) return undefined;
  const find = (part: number, k: number) => turns.find((one) => one.part === part && one.k === k) as Counted;
  const firstOf = ({ part }: { part: number }) => find(part, 0).ways;

  for (const { part, k, count, ways } of turns) {
    row(begunBy(ways, horizon), [], `= ${count}`);
    if (k === 0) continue;
    const before = find(part, k - 1);
    for (const { t } of ways[0].starts) row(begunBy(ways, t), overBy(before.ways, t, before.wait), "<= 0");
  }
  for (let moment = 0; moment < horizon; moment++) {
    const running = (of: Counted[]) => of.flatMap(({ ways }) => runningAt(ways, moment));
    row(running(turns), [], `<= ${means.people}`);
    row(running(turns.filter(({ burner }) => burner)), [], `<= ${means.burners}`);
    for (const kind of ["test-tube", "boiling tube", "place"] as const) {
      const there = kind === "place" ? means.places : means.tubes[kind];
      const mine = parts.filter(({ glass }) => glass && (kind === "place" || glass.kind === kind));
      if (there === undefined || mine.length === 0) continue;
      row(
        mine.flatMap((one) => allOf(begunBy(firstOf(one), moment), one.glass?.count)),
        mine.flatMap((one) => allOf(overBy(find(one.part, one.turns.length - 1).ways, moment), one.glass?.count)),
        `<= ${there}`,
      );
    }
  }
  for (const kind of ["test-tube", "boiling tube"] as const) {
    const mine = parts.filter(({ glass, mostDirty }) => glass?.kind === kind && mostDirty > 0);
    if (mine.length > 0) cleanFirst(kind, mine, means.tubes[kind] as number);
  }
  if (means.partsInOrder) {
    for (const one of parts) {
      const later = parts.filter(({ part }) => part > one.part);
      for (let moment = 0; later.length > 0 && moment < horizon; moment++) {
        const all = whole(`y${one.part}_${moment}`, 1);
        row(begunBy(firstOf(one), moment), [`${one.count} ${all}`], ">= 0");
        for (const other of later) row(begunBy(firstOf(other), moment), [`${other.count} ${all}`], "<= 0");
      }
    }
  }
  const text = [
    "Minimize",
    ` obj: 0 ${integers[0]}`,
    "Subject To",
    ...rows.map((text, r) => ` r${r}:${text}`),
    "Bounds",
    ...bounds.map((text) => ` ${text}`),
    "General",
    ...integers.map((name) => ` ${name}`),
    "End",
  ].join("\n");
  return { text, integers: integers.length };

  /** Of those that begin at one moment, an earlier part takes its tubes first where parts keep their order. */
  function cleanFirst(kind: string, mine: typeof parts, there: number) {
    const most = mine.reduce((sum, { count, mostDirty }) => sum + count * mostDirty, 0);
    const ranks = means.partsInOrder ? mine.map(({ part }) => part) : [Number.POSITIVE_INFINITY];
    for (let moment = 0; moment < horizon; moment++) {
      for (const rank of ranks) {
        const begun = mine.flatMap((one) =>
          firstOf(one).map(({ dirty, ...way }) => ({
            dirty,
            clean: one.mostDirty - dirty,
            xs: begunBy([{ dirty, ...way }], one.part <= rank ? moment : moment - 1),
          })),
        );
        const clean = begun.flatMap(({ clean, xs }) => (clean > 0 ? allOf(xs, clean) : []));
        const dirty = begun.flatMap(({ dirty, xs }) => (dirty > 0 ? allOf(xs, dirty) : []));
        const gone = whole(`z${kind[0]}_${moment}_${Math.min(rank, parts.length)}`, 1);
        row(clean, [], `<= ${there}`);
        row(clean, [`${there} ${gone}`], ">= 0");
        row(dirty, [`${most} ${gone}`], "<= 0");
      }
    }
  }
}
