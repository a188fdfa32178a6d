/** Conclude: what to repeat where a record fits nothing. Formulas in mhchem notation. */
import { list, OR } from "./language.ts";

export const TOO_MUCH =
  "So much is recorded and said of the samples at once that what to repeat first cannot be worked out here.";
export const CONTRADICTS = "The paper contradicts itself:";
export const NO_MENDING = "No observation can mend that.";
/** "a(i) for R" */
export const placeOf = (cell: string, sample: string) => `${cell} for ${sample}`;
export const lookAgain = (places: readonly string[]) => `Look again at ${list(places)}:`;
export const LOOK_AGAIN_ABOUT =
  "no salt the paper allows is predicted to show anything but the sights listed there. If a clean tube shows the same again, tell your teacher: the sample may hold an ion the paper does not name.";
export const FIRST = "Repeat first.";
export const firstAbout = (several: boolean) =>
  `All the rest agrees once this is set aside${several ? ", what is most easily misread first" : ""}:`;
export const otherSets = (count: number) => `${count} other ${count === 1 ? "set" : "sets"} of as few observations`;
export const MORE = "And more: with so many, repeat the tests from the start.";
/** Sights to look for; where there are several tests, each with its own. */
export function lookFor(tests: readonly { sights: readonly string[]; place: string }[]): string {
  const each = tests.map(({ sights, place }) => `${list(sights, OR)}${tests.length > 1 ? ` at ${place}` : ""}`);
  return `look for ${each.join("; ")}`;
}
/** After what to look for, what would then be left. */
export const THEN = "Then";
export const mayBe = (sample: string, formulas: readonly string[]) => `${sample} may be ${list(formulas, OR)}`;
export const mayBeOneOf = (sample: string, count: number) => `${sample} may be one of ${count} salts`;
