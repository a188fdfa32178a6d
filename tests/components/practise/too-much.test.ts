/** A practice whose paper says more of its samples than can be followed is still marked, as far as it can be. */
import { expect, test } from "vitest";
import type { Practice } from "../../../src/build/practice.ts";
import { begun } from "../../../src/components/practise/kept.ts";
import { reckon } from "../../../src/components/practise/reckoning.ts";
import { unknownsOf } from "../../../src/components/practise/unknowns.ts";
import { freeTable } from "../../engine/deduction/free-table.ts";
import { HOSTILE, uneven } from "../../engine/deduction/hostile-paper.ts";

test("the ions are marked, what proves them is not, and the reader is told why nothing follows", () => {
  const table = freeTable(HOSTILE.ions, HOSTILE.letters, HOSTILE.said, uneven);
  const salts = table.samples.map(({ set }) => table.sets[set].salts[0]);
  const looks = table.sets.map((set) => set.salts.map(() => -1));
  const practice: Practice = {
    table,
    draws: [salts],
    standings: ["undecided"],
    colours: [],
    solutions: looks,
    solids: looks,
    liquids: table.sets.map((set) => set.salts.map(() => [])),
    cm3: [],
  };
  const session = begun(7);
  const [{ cations, anions }] = salts.map((salt) => table.salts[salt]);
  session.answers.A = {
    cations: { ions: [...cations], because: [] },
    anions: { ions: anions.map(() => "none of these"), because: [] },
  };
  const of = reckon(practice, [], unknownsOf(practice, 7), session, {});
  expect(of.conclusions).toHaveLength(2 * table.samples.length);
  expect(of.conclusions.slice(0, 2)).toEqual([
    { sample: "A", what: "cation", answer: cations[0], earned: true, reason: "Right." },
    { sample: "A", what: "anion", answer: "none of these", earned: false, reason: `It was ${anions[0]}.` },
  ]);
  expect(of.leads).toEqual([expect.stringMatching(/leaves so much open.*cannot be followed here/)]);
  expect(of.right).toBe(false);
});
