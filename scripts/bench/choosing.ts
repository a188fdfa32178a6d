/** Choosing unknowns, as a teacher's page does on every change. */
import { unknownsOf } from "../../src/build/unknowns.ts";
import { aboutSet } from "../../src/engine/deduction/about-set.ts";
import { chooseUnknowns } from "../../src/engine/deduction/choose-unknowns.ts";
import { STANDINGS } from "../../src/engine/deduction/hardness.ts";
import { forSamples } from "../../src/engine/deduction/other-samples.ts";
import type { Practical } from "../../src/engine/index.ts";
import { median, rounded, say, times } from "./timing.ts";

const ROUNDS = { choose: 11, about: 5 };
const MANY = 8;

export function benchChoosing(practical: Practical) {
  const { table, store, tests } = unknownsOf(practical);
  const eight = forSamples(table, MANY);
  const { sets, looked } = chooseUnknowns(table, store);
  say(`choose: ${looked} sets of the lamp-room practical, and eight samples`);
  const [practicalMs, eightMs] = times(ROUNDS.choose, [
    () => chooseUnknowns(table, store),
    () => chooseUnknowns(eight, store),
  ]);
  const named = STANDINGS.flatMap((standing) => sets[standing]);
  const about = times(
    ROUNDS.about,
    named.map(
      ({ salts }) =>
        () =>
          aboutSet(table, salts, tests),
    ),
  );
  return { practicalMs: rounded(practicalMs), eightMs: rounded(eightMs), aboutMs: rounded(median(about)) };
}
