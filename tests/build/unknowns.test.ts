/** Unknowns for a small practical, predicted by the engine; what is expected is in the boards' tables (tests/reference/qualitative-tables.json). */
import { describe, expect, test } from "vitest";
import { unknownsOf } from "../../src/build/unknowns.ts";
import { chooseUnknowns, judge } from "../../src/engine/deduction/choose-unknowns.ts";
import { forSamples } from "../../src/engine/deduction/other-samples.ts";
import { type SettlingTest, settlingTests } from "../../src/engine/deduction/settling-tests.ts";
import { practical } from "../../src/engine/practical.ts";

const add = (reagent: string) => [
  { steps: [{ take: "1 cm3" }, { add: reagent, drops: 5 }] },
  { steps: [{ add: reagent, until: "in excess" }] },
];

/** Both alkalis on two solutions of nitrates, potassium iodide on the first only. */
const twoNitrates = practical.parse({
  title: "Two nitrates from the cold frame",
  summary: "Two solutions of nitrates and both alkalis.",
  level: "foundation",
  minutes: 20,
  order: 1,
  samples: [
    { label: "H", given: "solution", concentration: "0.1 mol/dm3", salt: "Zn(NO3)2" },
    { label: "K", given: "solution", concentration: "0.1 mol/dm3", salt: "Al(NO3)3" },
  ],
  paper: { cations: ["Al^3+", "Zn^2+", "Pb^2+", "K+"], anions: ["NO3-"] },
  parts: [
    { label: "a", title: "Sodium hydroxide", tests: add("NaOH(aq)") },
    { label: "b", title: "Aqueous ammonia", tests: add("NH3(aq)") },
    { label: "c", title: "Potassium iodide", samples: ["H"], tests: add("KI(aq)").slice(0, 1) },
  ],
  record: {},
});

const of = unknownsOf(twoNitrates);
const salt = (formula: string) => of.table.salts.findIndex((one) => one.formula === formula);
const set = (...formulas: string[]) => formulas.map(salt);

describe("both alkalis, and potassium iodide on one of two samples", () => {
  test("all four are in the school store, and the walkthrough's set is zinc and aluminium", () => {
    expect(of.store).toEqual(set("Al(NO3)3", "Zn(NO3)2", "Pb(NO3)2", "KNO3"));
    expect(of.own).toEqual(set("Zn(NO3)2", "Al(NO3)3"));
  });

  test("aluminium and lead are not told apart by alkalis (Q001 to Q004, Q036 to Q039), but by potassium iodide (Q196, Q200)", () => {
    for (const formula of ["Al(NO3)3", "Pb(NO3)2"]) {
      expect(judge(of.table, set(formula, "Zn(NO3)2"))?.standing).not.toBe("undecided");
      expect(judge(of.table, set("Zn(NO3)2", formula))?.standing).toBe("undecided");
    }
  });

  test("every standard test can be looked at", () => {
    expect(of.leftOut).toEqual([]);
  });

  test("zinc is told from aluminium by ammonia in excess (Q004, Q043)", () => {
    expect(judge(of.table, set("KNO3", "Zn(NO3)2"))?.standing).not.toBe("undecided");
    const cells = of.table.cells.map((cell) => (cell.id === "b(ii)" ? { ...cell, samples: [] } : cell));
    expect(judge({ ...of.table, cells }, set("KNO3", "Zn(NO3)2"))?.standing).toBe("undecided");
  });

  test("the decided sets: K neither aluminium nor lead", () => {
    const { inAll, sets } = chooseUnknowns(of.table, of.store, { listed: 99, looked: 99, steps: 1e6 });
    // Four salts for H, three others for K; of these K is aluminium or lead in six.
    expect(inAll).toEqual({ sets: 12, decided: 6 });
    const named = [...sets.easy, ...sets.middling, ...sets.hard].map(({ salts }) => salts[1]);
    expect(new Set(named)).toEqual(new Set(set("Zn(NO3)2", "KNO3")));
  });

  test("what settles it: the paper's own potassium iodide on K; of the standard tests it too, and no alkali", () => {
    const open = set("Zn(NO3)2", "Al(NO3)3");
    const names = (ways: SettlingTest[]) => ways.map(({ tests: [one] }) => of.tests[one].name);
    const own = settlingTests(of.table, open, of.tests, 9) ?? [];
    expect(names(own)).toEqual(["part c (Potassium iodide)"]);
    expect(own[0].onOneOf).toEqual(["K"]);
    const standard = of.tests.map((one) => (one.own ? { ...one, cells: [] } : one));
    const others = names(settlingTests(of.table, open, standard, 99) ?? []);
    expect(others).toContain("potassium iodide");
    // Aluminium fizzes with a carbonate, as its solution is acid, and lead does not (from memory).
    expect(others).toContain("sodium carbonate");
    // The alkalis again tell no more than before (Q001 to Q004, Q036 to Q039).
    expect(others).not.toContain("sodium hydroxide");
    expect(others).not.toContain("aqueous ammonia");
  });

  test("lead comes with what the store's list says of it, potassium nitrate with its bottle's warning", () => {
    expect(of.hazards[salt("Pb(NO3)2")].bottle).toMatch(/unborn/);
    expect(of.hazards[salt("Pb(NO3)2")].heat).toBeUndefined();
    expect(of.hazards[salt("KNO3")].bottle).toMatch(/oxidiser/);
  });
});

describe("a flame test on the second sample", () => {
  const parts = [{ label: "d", title: "Flame test", samples: ["K"], tests: [{ steps: [{ flame: true }] }] }];
  const flame = practical.parse({
    title: "Two nitrates and a flame",
    summary: "Two solutions of nitrates, potassium iodide and a flame.",
    level: "foundation",
    minutes: 20,
    order: 1,
    samples: [
      { label: "H", given: "solution", concentration: "0.1 mol/dm3", salt: "Zn(NO3)2" },
      { label: "K", given: "solution", concentration: "0.1 mol/dm3", salt: "KNO3" },
    ],
    paper: { cations: ["Al^3+", "Zn^2+", "Pb^2+", "K+"], anions: ["NO3-"] },
    parts: [{ label: "c", title: "Potassium iodide", tests: add("KI(aq)").slice(0, 1) }, ...parts],
    record: {},
  });
  const unknowns = unknownsOf(flame);
  const lead = unknowns.table.salts.findIndex(({ formula }) => formula === "Pb(NO3)2");
  const everySet = (table: typeof unknowns.table) => {
    const { inAll, sets } = chooseUnknowns(table, unknowns.store, { listed: 99, looked: 99, steps: 1e6 });
    return { inAll, salts: Object.values(sets).flatMap((some) => some.map(({ salts }) => salts)) };
  };

  test("lead is given out as H, never as K, and still counts among the answers of K", () => {
    const { inAll, salts } = everySet(unknowns.table);
    // Three salts for K, three others for H.
    expect(inAll?.sets).toBe(9);
    expect(salts).toHaveLength(9);
    expect(salts.some(([h]) => h === lead)).toBe(true);
    expect(salts.some(([, k]) => k === lead)).toBe(false);
    expect(unknowns.table.sets[0].salts).toContain(lead);
  });

  test("for another number of samples each test is done on all, so lead is none of them", () => {
    const { salts } = everySet(forSamples(unknowns.table, 3));
    expect(salts.length).toBeGreaterThan(0);
    expect(salts.flat()).not.toContain(lead);
  });

  test("where too many sets are to be looked at, none counted has lead in the flame", () => {
    const { inAll } = chooseUnknowns(unknowns.table, unknowns.store, { listed: 99, looked: 2, steps: 1e6 });
    expect(inAll?.sets).toBe(9);
  });

  test("a flame test is not what settles a sample of lead", () => {
    const open = settlingTests(
      unknowns.table,
      [lead, unknowns.own[1]],
      [{ name: "flame", own: true, cells: unknowns.table.cells.flatMap(({ id }, c) => (id === "d" ? [c] : [])) }],
      9,
    );
    expect(open).toEqual([]);
  });
});
