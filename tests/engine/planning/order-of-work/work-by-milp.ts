/**
 * Whether all work can end by a given time, as an integer programme for a general-purpose solver, written apart from the engine: a
 * variable for each moment counts how many tubes of a part begin a turn then. Tubes of a part are alike, and the first begun can always
 * be the first to go on. Rinsing takes no time in it.
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

/** In the CPLEX LP format; undefined when some tube alone takes longer. */
function modelOf(tubes: readonly TubeWork[], means: Means, horizon: number) {
  const parts = [...new Set(tubes.map(({ part }) => part))].map((part) => {
    const mine = tubes.filter((tube) => tube.part === part);
    return { part, count: mine.length, turns: mine[0].turns, glass: mine[0].tubes };
  });
  const rows: string[] = [];
  const bounds: string[] = [];
  const integers: string[] = [];
  const turns = parts.flatMap(({ part, count, turns }) => {
    const from = (k: number) => turns.slice(0, k).reduce((sum, { work, wait }) => sum + work + wait, 0);
    const after = (k: number) => turns.slice(k).reduce((sum, { work, wait }) => sum + work + wait, 0);
    return turns.map((turn, k) => {
      const starts: { t: number; x: string }[] = [];
      for (let t = from(k); t <= horizon - after(k); t++) starts.push({ t, x: `x${part}_${k}_${t}` });
      bounds.push(...starts.map(({ x }) => `0 <= ${x} <= ${count}`));
      integers.push(...starts.map(({ x }) => x));
      return { ...turn, part, k, count, starts };
    });
  });
  if (turns.some(({ starts }) => starts.length === 0)) return undefined;
  type Counted = (typeof turns)[number];
  const find = (part: number, k: number) => turns.find((one) => one.part === part && one.k === k) as Counted;
  const begunBy = ({ starts }: Counted, moment: number) => starts.flatMap(({ t, x }) => (t <= moment ? [x] : []));
  const running = ({ starts, work }: Counted, moment: number) =>
    starts.flatMap(({ t, x }) => (t <= moment && moment < t + work ? [x] : []));
  const row = (plus: string[], minus: string[], relation: string) => {
    if (plus.length + minus.length > 0)
      rows.push(`${plus.map((x) => ` + ${x}`).join("")}${minus.map((x) => ` - ${x}`).join("")} ${relation}`);
  };
  for (const one of turns) {
    row(
      one.starts.map(({ x }) => x),
      [],
      `= ${one.count}`,
    );
    if (one.k === 0) continue;
    const before = find(one.part, one.k - 1);
    for (const { t } of one.starts) row(begunBy(one, t), begunBy(before, t - before.work - before.wait), "<= 0");
  }
  for (let moment = 0; moment < horizon; moment++) {
    row(
      turns.flatMap((one) => running(one, moment)),
      [],
      `<= ${means.people}`,
    );
    row(
      turns.flatMap((one) => (one.burner ? running(one, moment) : [])),
      [],
      `<= ${means.burners}`,
    );
    for (const kind of ["test-tube", "boiling tube", "place"] as const) {
      const there = kind === "place" ? means.places : means.tubes[kind];
      const mine = parts.filter(({ glass }) => glass && (kind === "place" || glass.kind === kind));
      if (there === undefined || mine.length === 0) continue;
      const times = (of: typeof mine, xs: (part: (typeof mine)[number]) => string[]) =>
        of.flatMap((part) => xs(part).map((x) => `${part.glass?.count} ${x}`));
      const last = (part: (typeof mine)[number]) => find(part.part, part.turns.length - 1);
      row(
        times(mine, ({ part }) => begunBy(find(part, 0), moment)),
        times(mine, (part) => begunBy(last(part), moment - last(part).work)),
        `<= ${there}`,
      );
    }
  }
  if (means.partsInOrder) {
    for (const { part, count } of parts) {
      const later = parts.filter((other) => other.part > part);
      const first = find(part, 0);
      for (let moment = 0; later.length > 0 && moment < horizon; moment++) {
        const all = `y${part}_${moment}`;
        bounds.push(`0 <= ${all} <= 1`);
        integers.push(all);
        row(begunBy(first, moment), [`${count} ${all}`], ">= 0");
        for (const other of later) row(begunBy(find(other.part, 0), moment), [`${other.count} ${all}`], "<= 0");
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
}
