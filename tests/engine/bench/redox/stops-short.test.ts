/** Reactions that end before they are half through, and what they make all the same. */
import { expect, test } from "vitest";
import { stopsShort } from "../../../../src/engine/bench/redox/stops-short.ts";
import { cm3, drops, saltWith, show, solve, take } from "../show.ts";

const equilibrium = (totals: Record<string, number>) => {
  const result = solve({ totals, waterKg: 0.002 });
  if (!result.converged) throw new Error(result.reason);
  const { pH, molality, phases } = result;
  return { contents: totals, waterKg: 0.002, pH, molality, phases, celsius: 25, air: false };
};

/**
 * Fe^2+ + Ag+ = Fe^3+ + Ag: E 0.7996 and 0.771 V (CRC Handbook, from memory), so K is 3.0, with 0.025 mol/dm3 silver and 0.05 mol/dm3 iron(II)
 * x = 0.0031 mol/dm3. With activity coefficients by the equation of Davies at ionic strength 0.2 to 0.25 K is 10 to 12 in concentrations,
 * x 0.0075 to 0.0083 mol/dm3.
 */
test("iron(II) and silver: a tenth to a third of the silver", () => {
  const reaction = stopsShort(equilibrium({ "Fe^2+": 1e-4, "NO3-": 3.5e-4, "Ag+": 5e-5, "H+": 1e-4 }));
  const metal = ((reaction?.change.Ag ?? 0) * (reaction?.turns ?? 0)) / 0.002;
  expect(metal).toBeGreaterThan(0.0031);
  expect(metal).toBeLessThan(0.0085);
});

test("nothing is left over where a reaction runs to its end, or where no solid comes of it", () => {
  expect(stopsShort(equilibrium({ "Na+": 1e-4, "NO3-": 5e-5, "Ag+": 5e-5, "Cl-": 1e-4 }))).toBeUndefined();
  // Iron(III) and bromide: 0.771 and 1.087 V.
  expect(stopsShort(equilibrium({ "Fe^3+": 1e-4, "Br-": 3e-4 }))).toBeUndefined();
});

test.each([
  ["iron(II) and silver nitrate: clear, or grey", [take, cm3("AgNO3(aq)")]],
  ["the same in nitric acid", [take, cm3("HNO3(aq)"), cm3("AgNO3(aq)")]],
])("%s", (_, steps) => {
  const [{ readings }] = show(saltWith("Fe^2+"), steps);
  expect(readings[0]).toEqual({ none: true });
  expect(readings.slice(1)).toMatchObject([{ precipitate: { colour: "grey" } }]);
});

test("silver chloride stays white beside it", () => {
  const [{ readings }] = show({ "Fe^2+": 1, "Cl-": 2 }, [take, drops("HNO3(aq)"), cm3("AgNO3(aq)")]);
  expect(readings).toMatchObject([{ precipitate: { colour: "white" } }]);
});
