/** Sets of unknowns, in sentences for a teacher; formulas in mhchem notation. */
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import { aboutSet } from "../../engine/deduction/about-set.ts";
import type { Choice } from "../../engine/deduction/choose-unknowns.ts";
import { STANDINGS } from "../../engine/deduction/hardness.ts";
import { rulesOf } from "../../engine/deduction/rules.ts";
import { interchangeable } from "../../engine/deduction/sets-of-unknowns.ts";
import type { SettlingOrder } from "../../engine/deduction/settling-order.ts";
import type { FurtherTest, SettlingTest } from "../../engine/deduction/settling-tests.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import type { StoreHazard } from "../../engine/planning/store-hazards.ts";
import { capital } from "../capital.ts";
import { wordProved } from "../conclude/certificate-words.ts";
import { list } from "../sentence.ts";
import { STANDING_WORDS } from "./standing-words.ts";

/** The rule behind the words: see `standingOf`. */
export const HARDNESS_RULE =
  "Easy: each sample is decided by its own tests, with a sight at the border too, and no more other answers than there are samples are one misread observation away. " +
  "Hard: two samples or more need another one, or more than twice as many answers as samples are one misread observation away. " +
  "Middling: the rest. These limits are our choice.";

/** "R ZnSO4, S AlCl3, T NH4Cl" */
export const wordSet = ({ samples, salts }: PredictionTable, set: readonly number[]): string =>
  samples.map(({ label }, s) => `${label} ${salts[set[s]].formula}`).join(", ");

/** For another number of samples than the paper's own. */
export const OTHER_NUMBER =
  "The paper has another number of samples, so what it says of them falls away, and each test is done on every sample.";

const UNSAFE_LEFT_OUT =
  "Left out are sets that would put lead into a flame, or would have lead(II) nitrate or another salt heated dry that is not safe to heat in class.";

/** What holds for every set: the statements of the paper, which samples could change places, and which salts are not put where. */
export function wordTerms(table: PredictionTable): string[] {
  const rules = rulesOf(table);
  const letters = table.samples.map(({ label }) => label);
  const group = interchangeable(table, rules);
  const alike = [...new Set(group)].map((first) => letters.filter((_, s) => group[s] === first));
  return [
    rules.length > 0
      ? `The paper says: ${rules.map(({ words }) => words).join("; ")}.`
      : "Nothing is said that ties the samples together.",
    ...alike
      .filter((some) => some.length > 1)
      .map((some) => `${list(some)} are treated alike: which of them holds which salt makes no new set.`),
    ...(table.cells.some(({ unsafeOn, samples }) => unsafeOn && samples.length > 0) ? [UNSAFE_LEFT_OUT] : []),
  ];
}

/** "20 349", its parts never on two lines. */
const figure = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, count < 10_000 ? "" : "\u00a0");

/** "238 sets can be made up; the tests decide four of them: two middling, two hard." And how many of them a sight at the border would open. */
export function wordCount(choice: Choice): string {
  const { bordering } = choice;
  if (bordering === 0) return countInWords(choice);
  const [rests, them] = bordering === 1 ? ["rests", "it"] : ["rest", "them"];
  return `${countInWords(choice)} ${figure(bordering)} of the decided sets looked at ${rests} on the usual sights: one at the border would leave ${them} open.`;
}

function countInWords({ inAll, looked, found }: Choice): string {
  const kinds = STANDINGS.filter((standing) => standing !== "undecided" && found[standing] > 0)
    .map((standing) => `${figure(found[standing])} ${STANDING_WORDS[standing]}`)
    .join(", ");
  const sets = (count: number) => (count === 1 ? "1 set" : `${figure(count)} sets`);
  if (looked === 0 && !inAll) return "Too much to look at even one set: give fewer samples or a smaller store.";
  if (inAll?.sets === 0) return "No set can be made up from this store for this paper.";
  if (!inAll)
    return `There are more sets than can be looked at. Of ${figure(looked)} from all over the store the tests decide ${figure(looked - found.undecided)} on the usual sights${kinds && ` (${kinds})`}.`;
  const { sets: all, decided } = inAll;
  if (looked < all)
    return `${sets(all)} can be made up; the tests decide ${figure(decided)} of them on the usual sights. ${figure(looked)} were looked at${kinds && `; among them are ${kinds}`}.`;
  return `${sets(all)} can be made up; the tests decide ${decided === 0 ? "none of them" : `${figure(decided)}: ${kinds}`}.`;
}

/** "R and S can be told first, then T." */
export function wordOrder({ rounds, together }: SettlingOrder): string {
  const [first, ...later] = rounds.map((letters) => list(letters));
  if (!first) return `Only all observations together tell ${list(together)}.`;
  const last = together.length > 0 ? [`${list(together)} only together`] : [];
  const then = [...later, ...last].map((letters) => `, then ${letters}`).join("");
  return then ? `${first} can be told first${then}.` : "No sample has to wait for another.";
}

/** Everything said of one set, in sentences. */
export function wordAbout(table: PredictionTable, salts: readonly number[], tests: readonly FurtherTest[]): string[] {
  const about = unlessTooMuch(() => aboutSet(table, salts, tests));
  if (!about) return ["The paper makes too many statements about its samples at once to say more of this set."];
  const { certificate, order, open } = about;
  if (open) {
    const fits = Object.entries(open.alsoFits).map(
      ([label, salts]) =>
        `${label} may also be ${list(
          salts.map((salt) => table.salts[salt].formula),
          "or",
        )}.`,
    );
    return [...fits, wordSettling(open.settledBy, tests, table.samples.length)];
  }
  const needed = certificate.needed.map(({ cell }) => cell);
  return [
    ...(order ? [wordOrder(order)] : []),
    wordProved(certificate),
    needed.length > 0
      ? `Without ${list(needed, "or")} something stays open; every other test could be left out by itself.`
      : "Any one test could be left out.",
  ];
}

function wordSettling(
  ways: readonly SettlingTest[] | undefined,
  tests: readonly FurtherTest[],
  samples: number,
): string {
  if (!ways) return "So much fits that looking for a test that settles it takes too long.";
  if (ways.length === 0) return "None of the ordinary tests settles it, and no two of them.";
  const all = (letters: string[]) => (letters.length === samples && samples > 2 ? "every sample" : list(letters));
  const one = ({ tests: named, onOneOf, together }: SettlingTest) =>
    `${list(named.map((test) => tests[test].name))} on ${onOneOf.length > 0 ? list(onOneOf, "or") : all(together)}`;
  return `${capital(list(ways.map(one), "or"))} would settle it.`;
}

/** What the store's list says of the salts of a set, each once. */
export function wordHazards(
  { salts }: PredictionTable,
  set: readonly number[],
  hazards: Readonly<Record<number, StoreHazard>>,
): string[] {
  return [...new Set(set)].flatMap((salt) => {
    const hazard = hazards[salt];
    return hazard ? [`${salts[salt].formula}: ${[hazard.bottle, hazard.heat].filter((words) => words).join(" ")}`] : [];
  });
}
