import { describe, expect, test } from "vitest";
import { purposes } from "../../../src/engine/deduction/purposes.ts";
import { saltNamed, whitePrecipitates } from "./white-precipitates.ts";

const purposeOf = (cell: string, table = whitePrecipitates(["P"])) => {
  const found = purposes(table).find((one) => one.cell === cell);
  if (!found) throw new Error(`no purpose for ${cell}`);
  return found;
};

describe("what a test is for", () => {
  test.each([
    ["a(i)", []],
    ["a(ii)", ["cation"]],
    ["b(ii)", ["cation"]],
    ["c", ["anion"]],
    ["d", ["anion"]],
    ["e", ["cation"]],
  ])("%s tells apart: %j", (cell, kinds) => {
    expect(purposeOf(cell).tellsApart).toEqual(kinds);
  });

  test("excess sodium hydroxide makes two groups of cations", () => {
    expect(purposeOf("a(ii)").groups.map(({ cations }) => cations)).toEqual([
      ["Zn^2+", "Al^3+", "Pb^2+"],
      ["Ca^2+", "Mg^2+"],
    ]);
  });

  test("a borderline salt stands in each of its groups", () => {
    const calcium = saltNamed("Ca^2+", "Cl-");
    expect(
      purposeOf("b(i)").groups.flatMap(({ reading, salts }) => (salts.includes(calcium) ? [reading] : [])),
    ).toEqual([0, 2]);
  });

  test("readings that could be written for one another tell nothing apart", () => {
    const table = whitePrecipitates(["P"]);
    const [none, white] = [0, 1];
    const c = table.cells.findIndex(({ id }) => id === "c");
    table.cells[c].agrees[white] |= 1 << none;
    expect(purposeOf("c", table).tellsApart).toEqual([]);
  });

  test("a salt without a prediction may show anything", () => {
    const table = whitePrecipitates(["P"], {});
    const [set] = table.sets;
    const c = table.cells.findIndex(({ id }) => id === "c");
    set.salts.forEach((salt, row) => {
      if (table.salts[salt].anions.includes("Cl-")) set.accepts[row][c] = 0;
    });
    expect(purposeOf("c", table).tellsApart).toEqual([]);
    expect(purposeOf("c", table).groups.map(({ anions }) => anions)).toEqual([["SO4^2-", "NO3-"]]);
  });

  test("gases are those some allowed salt gives off, each once", () => {
    const table = whitePrecipitates(["P"]);
    table.cells[0].comesOff = [
      { gas: "CO2", salts: [0] },
      { gas: "NH3", salts: [1] },
      { gas: "CO2", salts: [2] },
    ];
    expect(purposeOf("a(i)", table).gases).toEqual(["CO2", "NH3"]);
    expect(purposeOf("c", table).gases).toEqual([]);
  });
});
