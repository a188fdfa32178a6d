/** Choosing unknowns for a class: the controls, and sets of unknowns in sentences. Formulas in mhchem notation. */
import { list, OR } from "./language.ts";

/** How hard a set is. */
export const STANDINGS = { easy: "easy", middling: "middling", hard: "hard", undecided: "not decided" };
/** The rule behind these words. */
export const HARDNESS_RULE =
  "Easy: each sample is decided by its own tests, with a sight at the border too, and no more other answers than there are samples are one misread observation away. " +
  "Hard: two samples or more need another one, or more than twice as many answers as samples are one misread observation away. " +
  "Middling: the rest. These limits are our choice.";

/** The controls. */
export const SAMPLES = "Samples";
export const asPaperHas = (count: number) => `${count}, as the paper has it`;
export const SHOW = "Show";
export const ALL_KINDS = "all kinds";
export const inStore = (ticked: number, possible: number) => `Salts in the store: ${ticked} of ${possible} ticked`;
export const USUAL = "A school store's usual ones";
export const ALL = "All";
export const NONE = "None";
export const UNREADABLE = "Part of the link could not be read.";
export const IN_ADDRESS = "The address of this page now holds your choice: copy it to keep or share it.";
export const SETS = "Sets to choose from";
export const WORKING = "Working it out …";
export const NOT_LOADED =
  "The sets for your choice could not be fetched; those below are for a school store's usual salts. Your choice is kept in this page's address: check the connection and load the page again.";

/** What is wrong with a link. */
export const quote = (text: string) => `“${text}”`;
export const linkTooLong = (letters: number, most: number) =>
  `The link is ${letters} characters long, expected at most ${most}.`;
export const badSamples = (found: string, most: number) =>
  `Samples: found ${found}, expected a whole number from 1 to ${most}.`;
export const badStore = (found: string) => `Store: found ${found}, expected formulas of salts that can be ticked here.`;

/** The sets. */
export const someOf = (some: number, all: number) => `${some} of ${all}`;
export const MORE = "More";
/** After "More", for those who hear it alone. */
export const onSet = (set: string) => `on ${set}`;
export const BEFORE_GIVING_OUT = "Before you give it out.";
export const OTHER_NUMBER =
  "The paper has another number of samples, so what it says of them falls away, and each test is done on every sample.";
export const UNSAFE_LEFT_OUT =
  "Left out are sets that would put lead into a flame, or would have lead(II) nitrate or another salt heated dry that is not safe to heat in class.";
export const paperSays = (statements: readonly string[]) => `The paper says: ${statements.join("; ")}.`;
export const NOTHING_TIES = "Nothing is said that ties the samples together.";
export const treatedAlike = (samples: readonly string[]) =>
  `${list(samples)} are treated alike: which of them holds which salt makes no new set.`;

/** How many sets there are. Figures come as text. */
const sets = (count: string) => (count === "1" ? "1 set" : `${count} sets`);
export const ofKind = (count: string, standing: keyof typeof STANDINGS) => `${count} ${STANDINGS[standing]}`;
export const NOT_EVEN_ONE = "Too much to look at even one set: give fewer samples or a smaller store.";
export const NO_SET = "No set can be made up from this store for this paper.";
/** @param kinds how many of each kind, as `ofKind` says it */
export const tooMany = (looked: string, decided: string, kinds: string) =>
  `There are more sets than can be looked at. Of ${looked} from all over the store the tests decide ${decided} on the usual sights${kinds && ` (${kinds})`}.`;
export const lookedAt = (all: string, decided: string, looked: string, kinds: string) =>
  `${sets(all)} can be made up; the tests decide ${decided} of them on the usual sights. ${looked} were looked at${kinds && `; among them are ${kinds}`}.`;
/** @param decided absent for none */
export const decides = (all: string, decided: string | undefined, kinds: string) =>
  `${sets(all)} can be made up; the tests decide ${decided === undefined ? "none of them" : `${decided}: ${kinds}`}.`;
export const bordering = (count: string) =>
  count === "1"
    ? "1 of the decided sets looked at rests on the usual sights: one at the border would leave it open."
    : `${count} of the decided sets looked at rest on the usual sights: one at the border would leave them open.`;

/** One set. */
/** A part of the paper, as one of the tests that would settle something. */
export const partNamed = (label: string, title: string) => `part ${label} (${title})`;
export const onlyAllTell = (samples: readonly string[]) => `Only all observations together tell ${list(samples)}.`;
export const NONE_WAITS = "No sample has to wait for another.";
/** "R and S can be told first, then T, then U and V only together." */
export function order(rounds: readonly (readonly string[])[], together: readonly string[]): string {
  const [first, ...later] = [
    ...rounds.map((samples) => list(samples)),
    ...(together.length > 0 ? [`${list(together)} only together`] : []),
  ];
  return `${first} can be told first${later.map((samples) => `, then ${samples}`).join("")}.`;
}
export const TOO_MANY_STATEMENTS =
  "The paper makes too many statements about its samples at once to say more of this set.";
export const mayAlsoBe = (sample: string, salts: readonly string[]) => `${sample} may also be ${list(salts, OR)}.`;
export const withoutStaysOpen = (tests: readonly string[]) =>
  `Without ${list(tests, OR)} something stays open; every other test could be left out by itself.`;
export const ANY_COULD_GO = "Any one test could be left out.";
export const TOO_LONG_TO_LOOK = "So much fits that looking for a test that settles it takes too long.";
export const NONE_SETTLES = "None of the ordinary tests settles it, and no two of them.";
export const EVERY_SAMPLE = "every sample";
/** A test, or several, on these samples: on one of them, or on all. */
export const testsOn = (tests: readonly string[], samples: readonly string[], onlyOne: boolean) =>
  `${list(tests)} on ${list(samples, onlyOne ? OR : undefined)}`;
/**
 * What settles it was judged by the sight each salt shows likeliest, and not by every one that it may show.
 * @param ways each as `testsOn` says it
 */
export const wouldSettle = (ways: readonly string[]) =>
  `If each sample shows what is likeliest, ${list(ways, OR)} would settle it.`;
