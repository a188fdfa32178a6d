/** What the shipped practicals cover between them: every kind of step, way of testing a gas, gas and trap, from easy to hard. */
import { resolve } from "node:path";
import { expect, test } from "vitest";
import { practicalPaths, readPage, readPracticalFile } from "../../src/build/practical-files.ts";
import { INDICATORS } from "../../src/engine/constants/indicators.ts";
import { GASES } from "../../src/engine/practical/gases.ts";
import { cellsOf, GAS_TESTS, type Observation, type Practical, type Step } from "../../src/engine/practical.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const course = practicalPaths(ROOT)
  .map((path): [string, Practical] => {
    const read = readPracticalFile(path, readPage(ROOT, path));
    if (!("practical" in read)) throw new Error(`${path} cannot be read`);
    return [path.replace(/^.*\/|\.mdx$/g, ""), read.practical];
  })
  .sort(([, a], [, b]) => a.order - b.order);
const called = (name: string): Practical => {
  const found = course.find(([file]) => file === name);
  if (!found) throw new Error(`the course has no ${name}`);
  return found[1];
};
const all = course.map(([, practical]) => practical);
const steps = all.flatMap(({ parts }) => cellsOf(parts).flatMap((cell) => cell.test.steps));
const seen = all.flatMap(({ record }) => Object.values(record).flatMap((row) => Object.values(row)));

/** A step in the words of an author's entry, as far as two of a kind are different things to learn. */
function kindOf(step: Step): string {
  if (step.do === "take") return "volume" in step ? "take a volume" : "take a mass";
  if (step.do === "add") return `add ${Object.keys(step.amount)[0]}`;
  if (step.do === "filter") return `filter, keep the ${step.keep}`;
  if (step.do === "heat solid") return `heat ${step.how}`;
  if (step.do === "lead through") return step.inExcess ? "lead through in excess" : "lead through";
  return step.do;
}

test("there are twelve, numbered from 1, and the level never falls", () => {
  expect(all.map(({ order }) => order)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  const levels = all.map(({ level }) => ["foundation", "core", "stretch"].indexOf(level));
  expect(levels).toEqual([...levels].sort((a, b) => a - b));
  expect(new Set(levels).size).toBe(3);
});

test("every kind of step is done somewhere", () => {
  const wanted = [
    ...["take a volume", "take a mass", "add drops", "add volume", "add pieces", "add inExcess"],
    ...["shake", "warm", "boil", "cool", "stand", "filter, keep the filtrate", "filter, keep the residue", "wash"],
    ...["heat gently", "heat strongly", "test gas", "lead through", "lead through in excess", "indicator", "flame"],
  ];
  expect([...new Set(steps.map(kindOf))].sort()).toEqual(wanted.sort());
});

test("every way of testing a gas is used, and every indicator", () => {
  const gasTests = steps.flatMap((step) => (step.do === "test gas" ? [step.with] : []));
  expect([...new Set(gasTests)].sort()).toEqual([...GAS_TESTS].sort());
  const indicators = steps.flatMap((step) => (step.do === "indicator" ? [step.with] : []));
  expect([...new Set(indicators)].sort()).toEqual(Object.keys(INDICATORS).sort());
});

test("every gas is found and named with its evidence, and nitrogen dioxide is also seen", () => {
  const found = seen.flatMap(({ gas }) => (gas ? [gas.formula] : []));
  expect([...new Set(found)].sort()).toEqual([...GASES].sort());
  expect(seen.some(({ fumes }) => fumes === "brown")).toBe(true);
});

test("every form of sample, a double salt and a mixture are given out", () => {
  const samples = all.flatMap((one) => one.samples);
  expect(new Set(samples.map(({ given }) => given))).toEqual(new Set(["solid", "solution", "both"]));
  const several = samples.filter(({ holds }) => holds?.cations === 2).map(({ salt }) => salt);
  expect(several.some((salt) => salt.includes(" + "))).toBe(true);
  expect(several.some((salt) => !salt.includes(" + "))).toBe(true);
});

test("the paper says something of samples together in every way there is", () => {
  const said = (kind: "share" | "differ" | "contains") => all.some(({ paper }) => paper[kind].length > 0);
  expect(["share", "differ", "contains"].filter((kind) => !said(kind as "share"))).toEqual([]);
  expect(all.some(({ paper }) => paper.inAll)).toBe(true);
});

/** Each trap: where it is laid, and the two lines of the record that show it, first the one that misleads and then the one that settles. */
const TRAPS: readonly {
  trap: string;
  practical: string;
  why: string;
  misleads: [sample: string, cell: string, seen: Observation];
  settles: [sample: string, cell: string, seen: Observation];
}[] = [
  {
    trap: "ammonium with nitrate",
    practical: "farm-co-op",
    why: "ammonium gives ammonia with alkali alone, so ammonia over foil means nitrate only after none came without foil",
    misleads: ["U", "a(ii)", { gas: { formula: "NH3", evidence: "damp red litmus turns blue" } }],
    settles: ["U", "b(ii)", { none: true, gas: false }],
  },
  {
    trap: "carbonate hiding in the barium test",
    practical: "pool-plant-room",
    why: "barium carbonate is as white as barium sulfate; acid takes only the carbonate away",
    misleads: ["G", "b(i)", { precipitate: { colour: "white", amount: "plain" } }],
    settles: ["G", "b(ii)", { fate: "dissolves", solution: "colourless", effervescence: true }],
  },
  {
    trap: "lead with chloride",
    practical: "conservators-bench",
    why: "lead(II) chloride falls from the reagents of the sulfate test; without chloride nothing falls",
    misleads: ["A", "c", { precipitate: { colour: "white", amount: "plain" } }],
    settles: ["A", "d", { none: true }],
  },
  {
    trap: "sulfite as sulfate",
    practical: "darkroom",
    why: "barium sulfite is white too and goes in acid",
    misleads: ["Q", "d(i)", { precipitate: { colour: "white", amount: "plain" } }],
    settles: ["Q", "d(ii)", { fate: "dissolves", solution: "colourless" }],
  },
];

test.each(TRAPS)("the trap of $trap is laid in $practical", ({ practical, misleads, settles }) => {
  const { record } = called(practical);
  for (const [sample, cell, expected] of [misleads, settles]) expect(record[sample][cell]).toEqual(expected);
});

test("one practical stays undecided, and says so at its end", () => {
  const open = course.filter(([, { undecided }]) => undecided);
  expect(open.map(([name]) => name)).toEqual(["dyers-shelf"]);
  expect(open[0][1].closing).toMatch(/stays between/);
});

test("safe as samples: no ammonium nitrate where solids are heated, no lead in a flame, no chromium(VI) given out", () => {
  for (const { paper, parts, samples } of all) {
    const heated = cellsOf(parts).some((cell) => cell.test.steps.some((step) => step.do === "heat solid"));
    expect(heated && paper.cations.includes("NH4+") && paper.anions.includes("NO3-")).toBe(false);
    expect(samples.filter(({ salt }) => /Cr2O7|CrO4/.test(salt))).toEqual([]);
    const lead = samples.filter(({ salt }) => salt.includes("Pb")).map(({ label }) => label);
    const flames = parts.filter((part) => part.tests.some((one) => one.steps.some((step) => step.do === "flame")));
    for (const part of flames) expect(lead.filter((label) => part.samples?.includes(label) ?? true)).toEqual([]);
  }
});
