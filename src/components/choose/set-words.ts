/** Sets of unknowns, in sentences for a teacher; formulas in mhchem notation. */
import * as say from "#words/choose.ts";
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
import { wordProved } from "../conclude/certificate-words.ts";

/** "R ZnSO4, S AlCl3, T NH4Cl" */
export const wordSet = ({ samples, salts }: PredictionTable, set: readonly number[]): string =>
  samples.map(({ label }, s) => `${label} ${salts[set[s]].formula}`).join(", ");

/** What holds for every set: the statements of the paper, which samples could change places, and which salts are not put where. */
export function wordTerms(table: PredictionTable): string[] {
  const rules = rulesOf(table);
  const letters = table.samples.map(({ label }) => label);
  const group = interchangeable(table, rules);
  const alike = [...new Set(group)].map((first) => letters.filter((_, s) => group[s] === first));
  return [
    rules.length > 0 ? say.paperSays(rules.map(({ words }) => words)) : say.NOTHING_TIES,
    ...alike.filter((some) => some.length > 1).map(say.treatedAlike),
    ...(table.cells.some(({ unsafeOn, samples }) => unsafeOn && samples.length > 0) ? [say.UNSAFE_LEFT_OUT] : []),
  ];
}

/** "20 349", its parts never on two lines. */
const figure = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, count < 10_000 ? "" : "\u00a0");

/** "238 sets can be made up; the tests decide four of them: two middling, two hard." And how many of them a sight at the border would open. */
export function wordCount(choice: Choice): string {
  const { bordering } = choice;
  if (bordering === 0) return countInWords(choice);
  return `${countInWords(choice)} ${say.bordering(figure(bordering))}`;
}

function countInWords({ inAll, looked, found }: Choice): string {
  const kinds = STANDINGS.filter((standing) => standing !== "undecided" && found[standing] > 0)
    .map((standing) => say.ofKind(figure(found[standing]), standing))
    .join(", ");
  if (looked === 0 && !inAll) return say.NOT_EVEN_ONE;
  if (inAll?.sets === 0) return say.NO_SET;
  if (!inAll) return say.tooMany(figure(looked), figure(looked - found.undecided), kinds);
  const { sets: all, decided } = inAll;
  if (looked < all) return say.lookedAt(figure(all), figure(decided), figure(looked), kinds);
  return say.decides(figure(all), decided === 0 ? undefined : figure(decided), kinds);
}

/** "R and S can be told first, then T." */
export function wordOrder({ rounds, together }: SettlingOrder): string {
  if (rounds.length === 0) return say.onlyAllTell(together);
  return rounds.length === 1 && together.length === 0 ? say.NONE_WAITS : say.order(rounds, together);
}

/** Everything said of one set, in sentences. */
export function wordAbout(table: PredictionTable, salts: readonly number[], tests: readonly FurtherTest[]): string[] {
  const about = unlessTooMuch(() => aboutSet(table, salts, tests));
  if (!about) return [say.TOO_MANY_STATEMENTS];
  const { certificate, order, open } = about;
  if (open) {
    const fits = Object.entries(open.alsoFits).map(([label, salts]) =>
      say.mayAlsoBe(
        label,
        salts.map((salt) => table.salts[salt].formula),
      ),
    );
    return [...fits, wordSettling(open.settledBy, tests, table.samples.length)];
  }
  const needed = certificate.needed.map(({ cell }) => cell);
  return [
    ...(order ? [wordOrder(order)] : []),
    wordProved(certificate),
    needed.length > 0 ? say.withoutStaysOpen(needed) : say.ANY_COULD_GO,
  ];
}

function wordSettling(
  ways: readonly SettlingTest[] | undefined,
  tests: readonly FurtherTest[],
  samples: number,
): string {
  if (!ways) return say.TOO_LONG_TO_LOOK;
  if (ways.length === 0) return say.NONE_SETTLES;
  const all = (letters: string[]) => (letters.length === samples && samples > 2 ? [say.EVERY_SAMPLE] : letters);
  const one = ({ tests: named, onOneOf, together }: SettlingTest) => {
    const names = named.map((test) => tests[test].name);
    return onOneOf.length > 0 ? say.testsOn(names, onOneOf, true) : say.testsOn(names, all(together), false);
  };
  return say.wouldSettle(ways.map(one));
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
