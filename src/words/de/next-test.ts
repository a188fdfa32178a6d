/** Conclude: the test to do next, what each sight would mean, and what would follow. */
import { list, OR } from "./language.ts";

export const TOO_OPEN = "Es ist noch so vieles offen, dass sich der beste nächste Versuch hier nicht berechnen lässt.";
export const NONE_LEFT = "Kein Versuch, der noch übrig ist, würde mehr sagen.";
export const NONE_LEFT_ABOUT = "Was noch offen ist, bleibt bei dieser Aufgabe offen.";
export const next = (cell: string, sample: string) => `Als Nächstes: ${cell} für ${sample}`;
const figure = (ways: number, million: string): string => (ways < 1e6 ? String(ways) : `mehr als ${million}`);
/** Of so many ways to give every sample a salt it leaves so many, the worst seen. */
export const leaves = (ways: number, worst: number) =>
  `Von ${figure(ways, "einer Million")} Möglichkeiten, die noch offen sind, lässt er höchstens ${figure(worst, "eine Million")} übrig, was auch immer zu sehen ist.`;
/** What doing every round comes to; `most` tests at most. */
export const IN_THE_END_OPEN = "Selbst mit allen Versuchen, die hier übrig sind, kann etwas offenbleiben.";
export const settlesAll = (most: number) =>
  most === 1 ? "Er entscheidet alles." : `Schritt für Schritt entscheiden höchstens ${most} Versuche alles.`;
/** Ends of the sentence on a sight. */
export const THEN = {
  test: (cell: string, sample: string) => `; dann ${cell} für ${sample}`,
  settled: "; das entscheidet alles",
  noMore: "; kein weiterer Versuch sagt mehr",
};
export const NEXT_BEST = "Die nächstbesten:";
export const other = (cell: string, sample: string) => `${cell} für ${sample}`;

/** Behind a test that is unsafe on a salt the sample may still hold; and before it. */
export const ASK_FIRST = " (frag erst deine Lehrkraft)";
export const warnUnsafe = (sample: string, mayBe: string) =>
  `Frag deine Lehrkraft, bevor du damit beginnst: ${sample} kann ${mayBe} sein, und damit macht keine Klasse diesen Versuch.`;
export const oneOf = (count: number) => `eines von ${count} Salzen`;

export const atBorder = (sight: string) => `an der Grenze, ${sight}`;
/** What a sample is after a sight. */
export const is = (sample: string, formula: string) => `${sample} ist ${formula}`;
export const mayBe = (sample: string, formulas: readonly string[]) => `${sample} kann ${list(formulas, OR)} sein`;
export const stillOneOf = (sample: string, count: number) => `${sample} ist noch eines von ${count} Salzen`;
