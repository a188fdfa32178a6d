/** Whether a bench could be worked as a schedule says, checked moment by moment and apart from the engine. */
import type { Bar, Means, Rinsed, TubeWork } from "../../../../src/engine/planning/order-of-work/bench-work.ts";

/** What is wrong with the schedule, in words; empty when it can be done. */
export function faultsOf(tubes: readonly TubeWork[], means: Means, bars: readonly Bar[]): string[] {
  const faults: string[] = [];
  const barOf = (tube: number, turn: number) => bars.find((bar) => bar.tube === tube && bar.turn === turn);
  tubes.forEach(({ turns }, tube) => {
    turns.forEach(({ work, wait }, turn) => {
      const bar = barOf(tube, turn);
      if (!bar) {
        faults.push(`tube ${tube} turn ${turn} is missing`);
        return;
      }
      if (bar.work < work) faults.push(`tube ${tube} turn ${turn} is too short`);
      const next = barOf(tube, turn + 1);
      if (next && next.start < bar.start + bar.work + wait) faults.push(`tube ${tube} turn ${turn + 1} comes too soon`);
    });
  });
  const end = Math.max(0, ...bars.map((bar) => bar.start + bar.work));
  for (let moment = 0; moment < end; moment++) {
    const running = bars.filter((bar) => bar.start <= moment && moment < bar.start + bar.work);
    if (running.length > means.people) faults.push(`too few hands at ${moment}`);
    if (running.filter(({ tube, turn }) => tubes[tube].turns[turn].burner).length > means.burners) {
      faults.push(`too few burners at ${moment}`);
    }
    const inUse = (kind?: Rinsed) =>
      tubes.reduce((sum, { turns, tubes: glass }, tube) => {
        const [first, last] = [barOf(tube, 0), barOf(tube, turns.length - 1)];
        if (!glass || (kind && glass.kind !== kind) || !first || !last) return sum;
        return first.start <= moment && moment < last.start + last.work ? sum + glass.count : sum;
      }, 0);
    for (const kind of ["test-tube", "boiling tube"] as const) {
      if (inUse(kind) > (means.tubes[kind] ?? Number.POSITIVE_INFINITY)) faults.push(`too few ${kind}s at ${moment}`);
    }
    if (inUse() > (means.places ?? Number.POSITIVE_INFINITY)) faults.push(`too few places at ${moment}`);
  }
  if (means.partsInOrder) {
    const begun = tubes.map((_, tube) => barOf(tube, 0)?.start ?? 0);
    tubes.forEach((tube, t) => {
      if (tubes.some((other, o) => other.part < tube.part && begun[o] > begun[t])) faults.push(`tube ${t} goes first`);
    });
  }
  for (const kind of ["test-tube", "boiling tube"] as const) {
    const there = means.tubes[kind];
    if (there === undefined) continue;
    const taken = bars.filter(({ tube, turn }) => turn === 0 && tubes[tube].tubes?.kind === kind);
    let used = 0;
    for (const bar of taken) {
      const { turns, tubes: glass } = tubes[bar.tube];
      const count = glass?.count ?? 0;
      const dirty = Math.max(0, Math.min(count, used + count - there));
      if (bar.work !== turns[0].work + dirty * means.rinse)
        faults.push(`tube ${bar.tube} is not rinsed as it should be`);
      used += count;
    }
  }
  return faults;
}
