/** Filtering, washing and cooling: what goes on with which part of the tube. Chemistry from school texts, from memory. */
import { describe, expect, test } from "vitest";
import { filter, wash } from "../../../src/engine/bench/filter.ts";
import { emptyTube, pour, settle } from "../../../src/engine/bench/tube.ts";
import { cm3, drops, saltWith, show, solve, take, warm } from "./show.ts";

/** 1 cm3 each of 0.1 mol/dm3 barium chloride and 0.2 mol/dm3 sodium sulfate: 0.1 mmol of barium sulfate, 0.1 mmol of sulfate left over. */
function milky() {
  const tube = emptyTube();
  pour(tube, { "Ba^2+": 0.1, "Cl-": 0.2 }, 1);
  pour(tube, { "Na+": 0.4, "SO4^2-": 0.2 }, 1);
  return tube;
}
const mmol = (amount: number | undefined) => Math.round((amount ?? 0) * 1e6) / 1e3;

describe("the parts of a tube, by counting", () => {
  test("the filtrate has all of the liquid and none of the solid", () => {
    const tube = milky();
    const { amounts, solids } = filter(tube, "filtrate", solve);
    expect(mmol(amounts.get("BaSO4(s)"))).toBe(0.1);
    expect(solids.map(({ id }) => id)).toEqual(["BaSO4(s)"]);
    expect(tube.waterKg).toBeCloseTo(0.002, 9);
    const { "Ba^2+": barium, "SO4^2-": sulfate, "Na+": sodium } = tube.contents;
    expect([barium, sulfate, sodium].map(mmol)).toEqual([0, 0.1, 0.4]);
    expect(settle(tube, solve).phases.get("BaSO4(s)") ?? 0).toBe(0);
  });

  test("the residue keeps the solid and 0.2 cm3 of the liquid, a tenth of it", () => {
    const tube = milky();
    filter(tube, "residue", solve);
    expect(mmol(settle(tube, solve).phases.get("BaSO4(s)"))).toBe(0.1);
    expect(mmol(tube.contents["SO4^2-"])).toBe(0.11);
    expect(mmol(tube.contents["Na+"])).toBe(0.04);
    expect(tube.waterKg).toBeCloseTo(0.0002, 9);
  });

  test("washing takes away what was dissolved", () => {
    const tube = milky();
    filter(tube, "residue", solve);
    const { amounts } = wash(tube, solve);
    expect(mmol(amounts.get("Na+"))).toBeGreaterThan(0.035);
    expect(mmol(tube.contents["Na+"])).toBe(0);
    expect(mmol(tube.contents["Ba^2+"])).toBe(0.1);
  });

  test("a clear liquid goes through whole", () => {
    const tube = emptyTube();
    pour(tube, { "Na+": 0.1, "Cl-": 0.1 }, 1);
    expect(filter(tube, "filtrate", solve)).toEqual({ amounts: new Map(), solids: [] });
    expect(mmol(tube.contents["Cl-"])).toBe(0.1);
  });
});

describe("what is recorded", () => {
  const copperAndAlkali = [take, cm3("NaOH(aq)")];

  test("filtering by itself changes nothing, and the precipitate on the paper has not dissolved", () => {
    const [, filtered] = show(saltWith("Cu^2+"), copperAndAlkali, [{ filter: "filtrate" }]);
    expect(filtered.readings).toEqual([{ fate: "remains" }]);
    expect(filtered.events).toEqual([]);
    const [clear] = show(saltWith("Cl-"), [take, { filter: "filtrate" }]);
    expect(clear.readings).toEqual([{ none: true }]);
  });

  test("precipitate and filtering in one test", () => {
    const [{ readings }] = show(saltWith("Cu^2+"), [...copperAndAlkali, { filter: "filtrate" }]);
    expect(readings[0]).toMatchObject({ precipitate: { colour: "light blue" } });
    expect(readings.map(({ fate }) => fate ?? "remains")).not.toContain("dissolves");
  });

  test("chloride after sulfate has been filtered off: the filtrate still clouds silver nitrate, the liquid over a sulfate does not", () => {
    const steps = [[take, cm3("HNO3(aq)"), cm3("Ba(NO3)2(aq)", 2)], [{ filter: "filtrate" }], [cm3("AgNO3(aq)")]];
    const both = { "Na+": 3, "SO4^2-": 1, "Cl-": 1 };
    expect(show(both, ...steps)[2].readings[0]).toMatchObject({ precipitate: { colour: "white" } });
    expect(show(saltWith("SO4^2-"), ...steps)[2].readings).toEqual([{ none: true }]);
  });

  test("a residue dissolves in acid: copper(II) hydroxide after washing", () => {
    const steps = [[take, cm3("NaOH(aq)")], [{ filter: "residue" }, { wash: true }], [cm3("HNO3(aq)", 2)]];
    const [, washed, acid] = show(saltWith("Cu^2+"), ...steps);
    expect(washed.readings).toEqual([{ fate: "remains" }]);
    expect(acid.readings[0]).toMatchObject({ fate: "dissolves", solution: "pale blue" });
    expect(acid.events.map(({ equation }) => equation)).toContain("Cu(OH)2(s) + 2 H+(aq) -> Cu^2+(aq) + 2 H2O(l)");
  });

  test("a hydroxide that ammonia made dissolves too, though no acid or alkali was poured in before it was filtered", () => {
    const steps = [[take, cm3("NH3(aq)", 4)], [{ filter: "residue" }, { wash: true }], [cm3("HCl(aq)", 3)]];
    const [, washed, acid] = show(saltWith("Fe^3+"), ...steps);
    expect(washed.readings).toEqual([{ fate: "remains" }]);
    expect(acid.readings[0].fate).toBe("dissolves");
  });

  test("barium sulfite on the paper dissolves in acid, barium sulfate does not", () => {
    const steps = [[take, cm3("BaCl2(aq)")], [{ filter: "residue" }, { wash: true }], [cm3("HCl(aq)")]];
    expect(show(saltWith("SO3^2-"), ...steps)[2].readings[0].fate).toBe("dissolves");
    expect(show(saltWith("SO4^2-"), ...steps)[2].readings).toEqual([{ fate: "remains" }]);
  });
});

describe("cooling", () => {
  test("lead(II) chloride dissolves when hot and comes back when cool", () => {
    const [, hot, cool] = show(
      saltWith("Pb^2+"),
      [take, drops("HCl(aq)"), cm3("HCl(aq)", 0.25)],
      [{ boil: "1 min" }],
      [{ cool: true }],
    );
    expect(hot.readings.some(({ fate }) => fate === "dissolves" || fate === "partly dissolves")).toBe(true);
    expect(cool.readings.some(({ precipitate, fate }) => precipitate || fate === "remains")).toBe(true);
  });

  test("within a test: warmed and cooled again is as it was", () => {
    const [same] = show(saltWith("Na+"), [take, warm, { cool: true }]);
    expect(same.readings).toEqual([{ none: true }]);
  });
});
