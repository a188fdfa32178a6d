/** Which curves a practical gets, and that their words agree with school chemistry. */
import { describe, expect, test } from "vitest";
import { curvesOf } from "../../src/build/curves.ts";
import { tellCurve } from "../../src/components/carry-out/curve/curve-words.ts";
import { BENCH_PRACTICE } from "../../src/engine/constants/bench-practice.ts";
import { createSolver } from "../../src/engine/equilibrium/solve.ts";
import { practical } from "../../src/engine/practical.ts";

const take = { take: "1 cm3" };
const dropsThenExcess = (reagent: string) => [
  { steps: [take, { add: reagent, drops: 5 }] },
  { steps: [{ add: reagent, until: "in excess" }] },
];
const bottle = (label: string, salt: string) => ({ label, given: "solution", concentration: "0.1 mol/dm3", salt });

const bench = practical.parse({
  title: "Two bottles",
  summary: "Two colourless solutions and two alkalis.",
  level: "core",
  minutes: 30,
  order: 1,
  samples: [bottle("P", "ZnCl2"), bottle("Q", "AlCl3")],
  paper: { cations: ["Zn^2+", "Al^3+"], anions: ["Cl-", "SO4^2-"] },
  parts: [
    { label: "a", title: "Sodium hydroxide", tests: dropsThenExcess("NaOH(aq)") },
    { label: "b", title: "Ammonia", tests: dropsThenExcess("NH3(aq)") },
    {
      label: "c",
      title: "Nitric acid",
      samples: ["P"],
      tests: [{ steps: [take, { add: "HNO3(aq)", volume: "1 cm3" }] }],
    },
  ],
  record: {},
});
const curves = curvesOf(bench, createSolver());

test("drops and excess are one curve, in the paper's order; acid that changes nothing gets none", () => {
  expect(curves.map(({ sample, ion, cells }) => [sample, ion, ...cells])).toEqual([
    ["P", "Zn^2+", "a(i)", "a(ii)"],
    ["Q", "Al^3+", "a(i)", "a(ii)"],
    ["P", "Zn^2+", "b(i)", "b(ii)"],
    ["Q", "Al^3+", "b(i)", "b(ii)"],
  ]);
});

// Both hydroxides dissolve in excess sodium hydroxide, only zinc's in ammonia: rows Q002, Q004, Q041 and Q043 of tests/reference/qualitative-tables.json,
// with their sources there. The complexes: from memory.
describe("the words tell why the precipitate goes, or that it remains", () => {
  const said = curves.map((curve) => tellCurve(curve, "the alkali", BENCH_PRACTICE.drop.value));
  const words = said.map((told) => told.map(({ says }) => says).join(" "));

  test.each([
    [0, "[Zn(OH)4]^2-"],
    [1, "[Al(OH)4]-"],
    [2, "[Zn(NH3)4]^2+"],
  ])("curve %i goes into %s", (index, complex) => {
    expect(words[index]).toContain("a precipitate appears");
    expect(words[index]).toContain(`into ${complex}, which stays dissolved: the precipitate goes. From `);
    expect(said[index].map(({ equation }) => equation?.includes(complex) ?? false)).toEqual([false, true]);
  });

  test("aluminium hydroxide remains in ammonia", () => {
    expect(words[3]).toContain("a precipitate appears");
    expect(words[3]).toContain("the precipitate remain");
    expect(words[3]).not.toContain("the precipitate goes");
  });
});
