/** What every equilibrium must keep, whatever is mixed: matter, charge, the phase rule, and one answer for one mixture. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { createSolver, type EquilibriumResult, type Start } from "../../../src/engine/equilibrium/solve.ts";
import { chargeLeft, entries, heldIn, mixtures, type Portion, totalsOf, waterGiven } from "./mixtures.ts";

const solve = createSolver();
const runs = { numRuns: 2000, seed: 20261125 };

/** Gases kept in, or free to leave at 1 atm. */
type Opening = Record<string, number>;
const openings = fc.constantFrom<Opening>({}, { "CO2(g)": 1, "SO2(g)": 1, "NH3(g)": 1 });

function settled(totals: Record<string, number>, gases: Opening, start?: Start): EquilibriumResult {
  const result = solve({ totals, waterKg: 1 }, { gases }, start);
  if (!result.converged) throw new Error(result.reason);
  return result;
}

/** The same answer: the same phases; molalities within 1e-8, or 1e-12 mol/kg where next to nothing is left of a species. */
function expectSame(one: EquilibriumResult, other: EquilibriumResult): void {
  expect([...one.phases.keys()].sort()).toEqual([...other.phases.keys()].sort());
  const compare = (a: ReadonlyMap<string, number>, b: ReadonlyMap<string, number>, what: string) => {
    for (const [id, amount] of a) {
      const off = Math.abs(amount - (b.get(id) ?? Number.NaN));
      if (!(off <= 1e-8 * amount + 1e-12)) expect.fail(`${what} ${id}: ${amount} and ${b.get(id)}`);
    }
  };
  compare(one.molality, other.molality, "molality");
  // A phase is what its components leave over, so it is as exact as the largest of them (1 mol), not as itself.
  for (const [id, amount] of one.phases) expect(Math.abs(amount - (other.phases.get(id) ?? 0))).toBeLessThan(1e-8);
}

test("converges; keeps matter, water and charge; no phase is negative or wants to form", () => {
  fc.assert(
    fc.property(mixtures, openings, (portions, gases) => {
      const totals = totalsOf(portions);
      const result = settled(totals, gases);
      const { mol, size } = heldIn(result);
      for (const [id, total] of Object.entries({ ...totals, H2O: waterGiven(totals) })) {
        const off = Math.abs((mol[id] ?? 0) - total) / (size[id] ?? Number.NaN);
        if (!(off <= 1e-8)) expect.fail(`${id}: ${mol[id]} held, ${total} given`);
      }
      expect(chargeLeft(result)).toBeLessThan(1e-8);
      for (const [id, m] of result.molality) if (!(Number.isFinite(m) && m >= 0)) expect.fail(`${id} at ${m} mol/kg`);
      for (const [id, amount] of result.phases) if (!(amount >= 0)) expect.fail(`${id}: ${amount} mol`);
      for (const [id, log] of result.saturation) {
        const entry = entries.get(id);
        const allowed = id.endsWith("(g)") ? gases[id] !== undefined : entry?.row?.formsInMinutes;
        if (allowed && !(log <= 1e-6)) expect.fail(`${id} is supersaturated by ${log}`);
        if (result.phases.has(id)) expect(Math.abs(log)).toBeLessThan(1e-6);
        else if (!allowed) expect(result.phases.has(id)).toBe(false);
      }
      for (const one of [result.pH, result.ionicStrength, result.waterActivity]) expect(one).toSatisfy(Number.isFinite);
    }),
    runs,
  );
});

test("the order in which stocks are mixed does not matter", () => {
  fc.assert(
    fc.property(mixtures, openings, (portions, gases) => {
      expectSame(settled(totalsOf(portions), gases), settled(totalsOf([...portions].reverse()), gases));
    }),
    runs,
  );
});

test("the start does not matter: from a part of the mixture, from a thinner one, from another mixture", () => {
  let before: Portion[] = [];
  fc.assert(
    fc.property(mixtures, openings, (portions, gases) => {
      const totals = totalsOf(portions);
      const cold = settled(totals, gases);
      const third = Object.fromEntries(Object.entries(totals).map(([id, mol]) => [id, mol * 0.3]));
      for (const from of [third, totalsOf(portions.slice(0, -1)), totalsOf(before)]) {
        expectSame(cold, settled(totals, gases, settled(from, gases).start));
      }
      before = portions;
    }),
    runs,
  );
});

const ALUMINIUM: Portion[] = [["AlCl3", 0.1]];

test("a warm start within the same system is taken up and comes to the same answer", () => {
  const alkaliTo = (mol: number) => totalsOf([...ALUMINIUM, ["NaOH", mol]]);
  const one = settled(alkaliTo(0.3), {});
  const other = alkaliTo(0.45);
  const warm = settled(other, {}, one.start);
  expect(warm.start.system).toBe(one.start.system);
  expectSame(settled(other, {}), warm);
});

test("adding nothing changes nothing", () => {
  fc.assert(
    fc.property(mixtures, openings, (portions, gases) => {
      const alone = settled(totalsOf(portions), gases);
      const withNothing = settled(totalsOf([...portions, ["AgNO3", 0], ["H2SO4", 0]]), gases);
      expect(withNothing.molality).toEqual(alone.molality);
      expect(withNothing.phases).toEqual(alone.phases);
    }),
    { ...runs, numRuns: 300 },
  );
});
