/**
 * What a candidate writes when nothing happens, and what a colour named in a record says. That "stays purple" is "no visible change", and
 * that a coloured reagent which does nothing is a negative result, is common practice, no source.
 */
import { describe, expect, test } from "vitest";
import { mayBe } from "../../../src/engine/bench/agreement.ts";
import { createPredictor } from "../../../src/engine/bench/predictor.ts";
import { tabulate } from "../../../src/engine/bench/tabulate.ts";
import { deduce } from "../../../src/engine/deduction/deduce.ts";
import { readPaper } from "../../../src/engine/practical/faults.ts";
import { sameColour } from "../../../src/engine/practical/same-colour.ts";
import type { Precipitate } from "../../../src/engine/practical.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";
import { cm3, drops, excess, saltWith, show, solve, take, test as tryGas } from "./show.ts";

const predictor = createPredictor(solve);

/** The ions of one sample that a record, in words of the lists, leaves possible. */
function left(cations: string[], anions: string[], tests: readonly unknown[][], record: readonly string[]): string[] {
  const read = readPaper({
    samples: [{ label: "A", given: "solution", concentration: "0.1 mol/dm3" }],
    paper: { cations, anions },
    parts: [{ label: "a", title: "test", tests: tests.map((steps) => ({ steps })) }],
  });
  if ("faults" in read) throw new Error("the paper of the test is faulty");
  const { table } = tabulate(read.paper, predictor, phrase);
  const written = table.cells.map(({ id, words }, c) => {
    expect(words).toContain(record[c]);
    return [id, words.indexOf(record[c])];
  });
  const [{ ions }] = deduce(table, { A: Object.fromEntries(written) }).samples;
  return ions.filter(({ standing }) => standing !== "impossible").map(({ ion }) => ion);
}

const NOTHING = "no visible change";

describe("a coloured reagent that does nothing is no visible change", () => {
  test.each([
    ["acidified KMnO4(aq)", ["Na+"], ["Cl-", "SO4^2-", "SO3^2-", "NO3-"], ["SO3^2-"]],
    ["acidified K2Cr2O7(aq)", ["Na+"], ["Cl-", "SO4^2-", "SO3^2-"], ["SO3^2-"]],
    ["I2(aq)", ["Na+"], ["Cl-", "SO3^2-"], ["SO3^2-"]],
    ["K2CrO4(aq)", ["Na+", "Mg^2+", "Ba^2+"], ["Cl-"], ["Ba^2+"]],
    ["K3[Fe(CN)6](aq)", ["Na+", "Al^3+", "Fe^2+"], ["Cl-"], ["Fe^2+"]],
  ])("%s: only what it acts on is ruled out", (reagent, cations, anions, out) => {
    const all = [...cations, ...anions];
    expect(left(cations, anions, [[take, drops(reagent)]], [NOTHING])).toEqual(all.filter((ion) => !out.includes(ion)));
  });
});

/** Iron(III) gives no gas with dilute acid; its salts are yellow to yellow-brown before and after (textbooks, from memory). */
test.each(["HCl(aq)", "H2SO4(aq)", "HNO3(aq)"])("iron(III) in %s is no visible change", (acid) => {
  for (const anion of ["Cl-", "NO3-", "SO4^2-"])
    expect(left(["Fe^3+", "Fe^2+"], [anion], [[take, cm3(acid)]], [NOTHING])).toContain("Fe^3+");
});

test("what stays purple is not colourless", () => {
  const [{ readings }] = show(saltWith("NO3-"), [take, drops("acidified KMnO4(aq)")]);
  expect(readings).toContainEqual({ none: true, stays: "purple" });
  expect(readings.some((reading) => mayBe({ solution: "colourless" }, reading))).toBe(false);
  expect(readings.some((reading) => mayBe({ none: true }, reading))).toBe(true);
  expect(phrase({ none: true, stays: "purple" })).toBe("no visible change (stays purple)");
});

describe("a colour of the liquid", () => {
  test("that an ion has none of in its tube rules it out", () => {
    const cations = ["Mg^2+", "Zn^2+", "Al^3+", "Ni^2+", "Cu^2+"];
    const ammonia = [[take, drops("NH3(aq)")], [excess("NH3(aq)")]];
    const words = ["white precipitate", "precipitate dissolves, giving a colourless solution"];
    expect(left(cations, ["NO3-"], ammonia, words)).toEqual(["Zn^2+", "NO3-"]);
    expect(
      left(
        cations,
        ["NO3-"],
        ammonia.map((steps) => steps),
        ["green precipitate", "precipitate remains, blue solution"],
      ),
    ).toEqual(["Ni^2+", "NO3-"]);
  });

  test("that stays as it was, or stands over a solid of that colour, does not", () => {
    const blueOver = [[take, drops("NaOH(aq)")]];
    const { readings, colours } = show({ "Cu^2+": 1, "SO4^2-": 1 }, ...blueOver)[0];
    const { colour } = readings[0].precipitate as Precipitate;
    expect(sameColour(colour, "blue")).toBe(true);
    expect(colours).toContain(colour);
    expect(show({ "Mg^2+": 1, "SO4^2-": 1 }, ...blueOver)[0].colours).toEqual(["colourless"]);
  });
});

/** Boards' notes on nitrite: "brown fumes at the mouth of the tube"; so little comes of 0.1 mol/dm3 that some see none (common practice). */
test("a nitrite in acid may give brown fumes", () => {
  const fumes = (ions: Record<string, number>) =>
    new Set(show(ions, [take, cm3("H2SO4(aq)")])[0].readings.map((reading) => reading.fumes));
  expect(fumes({ "Na+": 1, "NO2-": 1 })).toEqual(new Set(["brown", undefined]));
  expect(fumes({ "Na+": 1, "NO3-": 1 })).toEqual(new Set([undefined]));
});

/** Hydroxides that dissolved in alkali come back as acid is added, and go again in more (any textbook on amphoteric hydroxides). */
test.each([
  ["Al^3+", "HCl(aq)", "white"],
  ["Zn^2+", "HCl(aq)", "white"],
  ["Cr^3+", "HCl(aq)", "grey-green"],
  ["Pb^2+", "HNO3(aq)", "white"],
])("%s dissolved in alkali falls again with %s before it dissolves", (ion, acid, colour) => {
  const [, dissolved, back] = show(
    { [ion]: 1, "NO3-": Number(ion.slice(-2, -1)) },
    [take, drops("NaOH(aq)")],
    [excess("NaOH(aq)")],
    [cm3(acid, 6)],
  );
  expect(dissolved.readings[0].fate).toBe("dissolves");
  expect(back.readings[0]).toMatchObject({ precipitate: { colour }, fate: "dissolves" });
});

test("the gas test beside it keeps its own answer", () => {
  const [{ readings }] = show({ "Fe^3+": 1, "Cl-": 3 }, [take, cm3("HCl(aq)"), tryGas("limewater")]);
  expect(readings).toContainEqual({ none: true, gas: false });
});

// 0.25 mmol of hydroxide meet 0.1 mmol of copper(II) first, whose hydroxide is far less soluble (log Ksp -20 against -15, any textbook).
test("the faint green of iron(II) is not told over copper(II) hydroxide, and may be written", () => {
  const [seen] = show({ "Fe^2+": 1, "Cu^2+": 1, "SO4^2-": 2 }, [take, drops("NaOH(aq)")]);
  expect(seen.readings.map((reading) => phrase(reading))).toEqual(["light blue precipitate"]);
  expect(seen.colours).toContain("very pale green");
});
