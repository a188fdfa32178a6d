/** Times of calls, each the median of several rounds, and the figures made of them. */
import { performance } from "node:perf_hooks";

const WARM_UP = 3;

/** Says on the error stream what is being measured. */
export const say = (what: string): void => console.error(what);

/** Time of one call, ms. */
function timed(call: () => unknown): number {
  const begun = performance.now();
  call();
  return performance.now() - begun;
}

/** The time of each call, ms: the median of so many rounds, after a few that only warm the machine up. */
export function times(rounds: number, calls: readonly (() => unknown)[]): number[] {
  for (let round = 0; round < WARM_UP; round++) for (const call of calls) call();
  const each = Array.from({ length: rounds }, () => calls.map(timed));
  return calls.map((_, call) => median(each.map((round) => round[call])));
}

/** Processor time of one call in its own thread, ms: the median of so many rounds. For calls of a millisecond or more. */
export function processorTime(rounds: number, call: () => unknown): number {
  for (let round = 0; round < WARM_UP; round++) call();
  const each = Array.from({ length: rounds }, () => {
    const begun = process.threadCpuUsage();
    call();
    const { user, system } = process.threadCpuUsage(begun);
    return (user + system) / 1000;
  });
  return median(each);
}

/** The value that this part of all values does not exceed. */
export function quantile(values: readonly number[], part: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(part * sorted.length) - 1)];
}
export const median = (values: readonly number[]): number => quantile(values, 0.5);
/** To three significant figures. */
export const rounded = (value: number): number => Number(value.toPrecision(3));
