/** Conclude: the test to do next, what each sight would mean, and what would follow. */
import { list, OR } from "./language.ts";

export const TOO_OPEN = "So much is still open that the best next test cannot be worked out here.";
export const NONE_LEFT = "No test left here would tell more.";
export const NONE_LEFT_ABOUT = "What is still open stays open on this paper.";
export const next = (cell: string, sample: string) => `Next: ${cell} for ${sample}`;
const figure = (ways: number): string => (ways < 1e6 ? String(ways) : "over a million");
/** Of so many ways to give every sample a salt it leaves so many, the worst seen. */
export const leaves = (ways: number, worst: number) =>
  `Of the ${figure(ways)} ways still open it leaves at most ${figure(worst)}, whatever it shows.`;
/** What doing every round comes to; `most` tests at most. */
export const IN_THE_END_OPEN = "Even with every test left here something may stay open.";
export const settlesAll = (most: number) =>
  most === 1 ? "It settles everything." : `Round by round, at most ${most} tests settle everything.`;
/** Ends of the sentence on a sight. */
export const THEN = {
  test: (cell: string, sample: string) => `; then ${cell} for ${sample}`,
  settled: "; that settles everything",
  noMore: "; no test left tells more",
};
export const NEXT_BEST = "Next best:";
export const other = (cell: string, sample: string) => `${cell} for ${sample}`;

/** Behind a test that is unsafe on a salt the sample may still hold; and before it. */
export const ASK_FIRST = " (ask your teacher first)";
export const warnUnsafe = (sample: string, mayBe: string) =>
  `Ask your teacher before you begin it: ${sample} may be ${mayBe}, on which no class does this test.`;
export const oneOf = (count: number) => `one of ${count} salts`;

export const atBorder = (sight: string) => `at the border, ${sight}`;
/** What a sample is after a sight. */
export const is = (sample: string, formula: string) => `${sample} is ${formula}`;
export const mayBe = (sample: string, formulas: readonly string[]) => `${sample} may be ${list(formulas, OR)}`;
export const stillOneOf = (sample: string, count: number) => `${sample} is still one of ${count} salts`;
