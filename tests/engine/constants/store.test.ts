import { describe, expect, test } from "vitest";
import { flameColours } from "../../../src/engine/constants/flame-colours.ts";
import { firstAids, reagentSources, reagents, wastes } from "../../../src/engine/constants/reagents.ts";
import { salts } from "../../../src/engine/constants/salts.ts";
import { ionName, saltName } from "../../../src/engine/formula/ion-name.ts";
import { parseFormula } from "../../../src/engine/formula/parse.ts";

/** Atoms and charge of a set of ions, less those of the formula; what is left must be water of crystallisation. */
function surplus(ions: Readonly<Record<string, number>>, formula: string) {
  const atoms: Record<string, number> = {};
  let charge = 0;
  const add = (text: string, factor: number) => {
    const read = parseFormula(text);
    charge += factor * read.charge;
    for (const [symbol, n] of Object.entries(read.elements)) atoms[symbol] = (atoms[symbol] ?? 0) + factor * n;
  };
  add(formula, 1);
  for (const [ion, n] of Object.entries(ions)) add(ion, -n);
  const { H = 0, O = 0, ...others } = atoms;
  return { charge, hydrogenPerOxygen: H - 2 * O, water: O, others: Object.values(others).filter((n) => n !== 0) };
}

describe.each(salts)("$name", (salt) => {
  test("is made of its ions and water", () => {
    const water = Number(/\*(\d*)H2O$/.exec(salt.formula)?.[1] || (salt.formula.endsWith("*H2O") ? 1 : 0));
    expect(surplus(salt.ions, salt.formula)).toEqual({ charge: 0, hydrogenPerOxygen: 0, water, others: [] });
  });

  test("has cations and anions that can be named, and is named after them", () => {
    expect(salt.cations.length).toBeGreaterThan(0);
    expect(salt.anions.length).toBeGreaterThan(0);
    for (const ion of [...salt.cations, ...salt.anions]) {
      expect(salt.name).toContain(ion === "OH-" ? "basic" : ionName(ion));
    }
    if (salt.cations.length + salt.anions.length === 2)
      expect(salt.name).toContain(saltName(salt.cations[0], salt.anions[0]));
  });

  test("says from where its hazard is, and has it confirmed where no source was read", () => {
    expect(salt.sources.length).toBeGreaterThan(0);
    const read = salt.sources.some((key) => reagentSources[key].read);
    expect(read || salt.confirm === true).toBe(true);
  });
});

test("no two salts share a name or a formula", () => {
  expect(new Set(salts.map(({ name }) => name)).size).toBe(salts.length);
  expect(new Set(salts.map(({ formula }) => formula)).size).toBe(salts.length);
});

describe.each(reagents)("$id", (reagent) => {
  test("brings what its formula holds", () => {
    if (Object.keys(reagent.components).length === 0) {
      expect(reagent.concentration).toBeNull();
      return;
    }
    expect(reagent.formula).toBeDefined();
    const { others, ...rest } = surplus(reagent.components, reagent.formula ?? "");
    expect(rest).toEqual({ charge: 0, hydrogenPerOxygen: 0, water: 0 });
    // The iodine is kept dissolved by more iodide than one for each of it, and potassium comes with that.
    if (reagent.id !== "I2(aq)") expect(others).toEqual([]);
    else expect(others.map((one) => one.toFixed(9))).toEqual(["-1.400000000", "-1.400000000"]);
  });

  test("has a strength inside its usual range", () => {
    const { concentration, range } = reagent;
    if (range !== undefined) expect(concentration).toBeGreaterThanOrEqual(range[0]);
    if (range !== undefined) expect(concentration).toBeLessThanOrEqual(range[1]);
  });

  test("has a hazard line, first aid, waste and a source", () => {
    expect(reagent.hazards.length).toBeGreaterThan(0);
    expect(Object.keys(firstAids)).toContain(reagent.firstAid);
    expect(Object.keys(wastes)).toContain(reagent.waste);
    expect(reagent.sources.length).toBeGreaterThan(0);
    expect(Object.keys(reagentSources)).toEqual(expect.arrayContaining([...reagent.sources]));
  });

  test("asks to have remembered hazard classes confirmed", () => {
    const remembered = reagent.hazardCodes.length > 0 && reagent.status.includes("memory");
    expect(!remembered || reagent.confirm === true).toBe(true);
  });
});

test("no two reagents share an id", () => {
  expect(new Set(reagents.map(({ id }) => id)).size).toBe(reagents.length);
});

test.each(flameColours)("the flame of $cation", ({ colour, cation, emission, maskedBy }) => {
  expect(parseFormula(cation).charge).toBeGreaterThan(0);
  expect(maskedBy).not.toContain(cation);
  const known = flameColours.filter((row) => row.colour !== null).map((row) => row.cation);
  expect(known).toEqual(expect.arrayContaining([...maskedBy]));
  expect(emission.length > 0).toBe(colour !== null);
  for (const { nm } of emission) {
    const [from, to] = typeof nm === "number" ? [nm, nm] : nm;
    expect(from).toBeLessThanOrEqual(to);
    expect(from).toBeGreaterThan(380);
    expect(to).toBeLessThan(780);
  }
});
