/** A bound on reasoning that is the same on every machine: steps are counted, and no clock is read. */

/** Steps that may still be taken, each some tens of nanoseconds on a laptop. */
export interface Work {
  left: number;
}

/** Statements of the paper tie the samples together in so many ways that the answer would keep a reader waiting. */
export class TooMuchWork extends Error {
  override name = "TooMuchWork";
  constructor() {
    super("the statements about the samples are too many to follow at once");
  }
}

/**
 * Steps a page may take for one answer: a quarter of a second on a laptop, a second or two on a cheap phone. A record of a practical of the
 * course takes fifty thousand at most; six samples of the advanced list of which no two hold the same cation and no two the same anion,
 * under three million.
 */
export const STEPS = 12_000_000;

export const aPagesWork = (): Work => ({ left: STEPS });

/** @throws TooMuchWork when there are not so many left */
export function spend(work: Work, steps: number): void {
  work.left -= steps;
  if (work.left < 0) throw new TooMuchWork();
}

/** @returns undefined where the answer would take too much work */
export function unlessTooMuch<T>(answer: () => T): T | undefined {
  try {
    return answer();
  } catch (error) {
    if (error instanceof TooMuchWork) return undefined;
    throw error;
  }
}

/** An answer that may take so many of the steps left and no more. @returns undefined where it would take more */
export function within<T>(work: Work, steps: number, answer: (some: Work) => T): T | undefined {
  const given = Math.min(steps, work.left);
  const some: Work = { left: given };
  const found = unlessTooMuch(() => answer(some));
  work.left -= given - Math.max(0, some.left);
  return found;
}
