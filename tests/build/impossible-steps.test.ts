/** Steps that cannot be carried out are refused at their place, with what to do instead. */
import { expect, test } from "vitest";
import { wordFault } from "../../src/authoring/faults.ts";
import { wrongSteps } from "../../src/build/check/steps.ts";
import { readPracticalFile } from "../../src/build/practical-files.ts";
import { impossibleSteps } from "../../src/engine/bench/impossible-steps.ts";
import { type Edit, edited, FILE } from "./broken.ts";

/** The shipped practical with one more part, of one test for each list of steps. */
function withTests(...tests: string[][]): string {
  const lines = tests.flatMap((steps) => ["      - steps:", ...steps.map((step) => `          - ${step}`)]);
  const part = ["  - label: e", "    title: More", "    tests:", ...lines, "record:", ""].join("\n");
  const edit: Edit = ["record:\n", part];
  return edited(edit);
}
/** Faults of the steps alone: nothing is predicted. */
function faultsIn(text: string) {
  const read = readPracticalFile(FILE, text);
  return "faults" in read
    ? read.faults
    : impossibleSteps(read.practical).map(({ path, ...rest }) => ({ ...read.source.placeOf(path), ...rest }));
}
const told = (...tests: string[][]) => faultsIn(withTests(...tests)).map(({ what, advice }) => `${what}; ${advice}`);

const TAKE = "{ take: 1 cm3 }";
const BARIUM = "{ add: BaCl2(aq), volume: 1 cm3 }";

test("in words, with the place", () => {
  expect(
    faultsIn(withTests([TAKE, BARIUM, "{ wash: true }"]))
      .map(wordFault)
      .join("\n"),
  ).toMatchInlineSnapshot(`
    "src/content/practicals/lamp-room-shelf.mdx:59:21  part e: nothing to wash
      stated: wash: true
      found:  no residue on a filter paper at this point of the part
      to do:  filter with filter: residue just before it, or leave the washing out
      59 |           - { wash: true }
         |                     ^"
  `);
});

test.each<[string, string[][], string[]]>([
  [
    "washing a filtrate",
    [[TAKE, BARIUM, "{ filter: filtrate }", "{ wash: true }"]],
    ["part e: nothing to wash; filter with filter: residue just before it, or leave the washing out"],
  ],
  [
    "washing after a reagent went onto the residue",
    [
      [TAKE, BARIUM, "{ filter: residue }"],
      ["{ add: HCl(aq), drops: 5 }", "{ wash: true }"],
    ],
    ["part e: nothing to wash; filter with filter: residue just before it, or leave the washing out"],
  ],
  [
    "two gas tests on a line",
    [[TAKE, "{ add: HCl(aq), volume: 1 cm3 }", "{ testGas: limewater }", "{ leadThrough: limewater }"]],
    ["part e: two gas tests in one; give each gas test a line of its own"],
  ],
  [
    "two indicators on a line",
    [[TAKE, "{ indicator: litmus }", "{ indicator: universal indicator }"]],
    ["part e: two indicators in one; give each indicator a line of its own"],
  ],
  [
    "chlorine water after ammonia",
    [
      [TAKE, "{ add: NH3(aq), drops: 5 }"],
      ["{ add: HNO3(aq), volume: 1 cm3 }", "{ add: Cl2(aq), drops: 5 }"],
    ],
    ["part e: not mixed in class; leave the step out, or do it in a tube of its own without the one or the other"],
  ],
  [
    "limewater stronger than saturated",
    [[TAKE, "{ add: HCl(aq), volume: 1 cm3 }", "{ leadThrough: limewater, at: 0.1 mol/dm3 }"]],
    ["part e: no such limewater; leave the strength out, or dilute it: at: 0.01 mol/dm3"],
  ],
  [
    "a test for water over a solution",
    [[TAKE, "{ warm: true }", "{ testGas: cobalt(II) chloride paper }"]],
    ["part e: water is everywhere here; heat a dry solid first, or leave this test out"],
  ],
])("%s", (_, tests, faults) => {
  expect(told(...tests)).toEqual(faults);
});

test.each<[string, string[][]]>([
  [
    "a residue washed, and washed again in the next test",
    [[TAKE, BARIUM, "{ filter: residue }", "{ wash: true }"], ["{ wash: true }"]],
  ],
  [
    "a residue dissolved in a reagent",
    [[TAKE, BARIUM, "{ filter: residue }", "{ wash: true }"], ["{ add: HCl(aq), volume: 1 cm3 }"]],
  ],
  [
    "a gas led through limewater, then litmus in the liquid, on two lines",
    [
      [TAKE, "{ add: HCl(aq), volume: 1 cm3 }", "{ leadThrough: limewater, until: in excess, at: 0.01 mol/dm3 }"],
      ["{ indicator: litmus }"],
    ],
  ],
])("%s passes", (_, tests) => {
  expect(told(...tests)).toEqual([]);
});

const SOLID: Edit = [
  "given: solution, concentration: 0.1 mol/dm3, salt: NH4Cl",
  "given: both, concentration: 0.1 mol/dm3, salt: NH4Cl",
];
test.each([
  ["{ indicator: litmus }", "part e: no liquid for the indicator; add H2O(l) before it"],
  ["{ filter: residue }", "part e: nothing to filter; add water or a reagent before it"],
])("%s on a dry solid", (step, fault) => {
  const part = `  - label: e\n    title: More\n    samples: [T]\n    tests:\n      - steps:\n          - { take: 0.2 g }\n          - ${step}\nrecord:\n`;
  expect(faultsIn(edited(SOLID, ["record:\n", part])).map(({ what, advice }) => `${what}; ${advice}`)).toEqual([fault]);
});

/** Common practice; CLP (EUH032) for thiocyanates. What samples may hold is not counted, and a cold drop test with peroxide is only warned of. */
test("what is not mixed in class is refused at the step that makes it", () => {
  const wrong = (...steps: string[]) => {
    const read = readPracticalFile(FILE, withTests([TAKE, ...steps]));
    if ("faults" in read) throw new Error(read.faults.map(wordFault).join());
    const { practical, source } = read;
    return wrongSteps(practical, (path, rest) => ({ ...source.placeOf(path), ...rest })).map(
      ({ line, what, stated }) => `${line} ${what}: ${stated}`,
    );
  };
  const acid = "{ add: HCl(aq), drops: 5 }";
  // The part begins with three lines, then takes the sample in line 57.
  expect(wrong("{ add: 'K4[Fe(CN)6](aq)', drops: 5 }", acid, "{ boil: 1 min }")).toEqual([
    "60 part e: not mixed in class: a hexacyanoferrate and hot acid",
  ]);
  const pour = (reagent: string) => `{ add: '${reagent}', drops: 5 }`;
  // What was warmed is still hot when the acid comes.
  expect(wrong(pour("KSCN(aq)"), "{ warm: true }", acid)).toEqual([
    "60 part e: not mixed in class: a thiocyanate and hot acid",
  ]);
  expect(wrong(pour("K4[Fe(CN)6](aq)"), "{ boil: 1 min }", pour("H2SO4(aq)"))).toEqual([
    "60 part e: not mixed in class: a hexacyanoferrate and hot acid",
  ]);
  expect(wrong(pour("KSCN(aq)"), "{ warm: true }", "{ cool: true }", acid)).toEqual([]);
  expect(wrong(pour("KSCN(aq)"), pour("Cl2(aq)"))).toEqual([
    "59 part e: not mixed in class: a thiocyanate and chlorine water",
  ]);
  expect(wrong(acid, pour("KMnO4(aq)"), "{ warm: true }")).toEqual([
    "60 part e: not mixed in class: manganate(VII) and hot hydrochloric acid",
  ]);
  expect(wrong(acid, pour("KMnO4(aq)"))).toEqual([]);
  expect(wrong("{ add: Cl2(aq), drops: 5 }", "{ add: NH3(aq), drops: 5 }")).toEqual([
    "59 part e: not mixed in class: chlorine water and ammonia",
  ]);
  expect(wrong("{ add: 'K4[Fe(CN)6](aq)', drops: 5 }", acid)).toEqual([]);
  expect(wrong("{ add: KSCN(aq), drops: 5 }", "{ add: acidified H2O2(aq), drops: 5 }")).toEqual([]);
});
