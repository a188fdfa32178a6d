/** What each way of testing a gas shows. Boards' gas tables: chlorine bleaches damp litmus; ammonia turns the red paper blue. */
import { expect, test } from "vitest";
import { mayBe } from "../../../src/engine/bench/agreement.ts";
import { signOf } from "../../../src/engine/bench/gas-signs.ts";
import { heatSolid } from "../../../src/engine/bench/heat/heat-solid.ts";
import { gasOverHeated } from "../../../src/engine/bench/read-heat.ts";
import { cm3, saltWith, show, take, test as tryGas } from "./show.ts";

test("damp litmus of either colour is bleached by chlorine, and not by the other acid gases", () => {
  const bleached = { formula: "Cl2", evidence: "damp litmus is bleached" };
  expect(signOf("damp blue litmus", ["Cl2"])).toEqual(bleached);
  expect(signOf("damp red litmus", ["Cl2"])).toEqual(bleached);
  expect(signOf("damp blue litmus", ["HCl"])?.evidence).toBe("damp blue litmus turns red");
  expect(signOf("damp red litmus", ["HCl"])).toBeUndefined();
});

const gasesOver = (ion: string, reagent: string, paper: string) =>
  show(saltWith(ion), [take, cm3(reagent), tryGas(paper)])[0];

test("a nitrite in acid reddens damp blue litmus, so red litmus does not leave the sulfite alone", () => {
  const red = { formula: "NO2", evidence: "damp blue litmus turns red" } as const;
  const shown = gasesOver("NO2-", "H2SO4(aq)", "damp blue litmus");
  for (const { gas } of shown.readings) expect(gas).toEqual(red);
  expect(shown.gases).toEqual(["NO2"]);
  const recorded = { gas: { formula: "SO2", evidence: red.evidence } } as const;
  for (const ion of ["NO2-", "SO3^2-"]) {
    const { readings } = gasesOver(ion, "H2SO4(aq)", "damp blue litmus");
    expect(readings.some((reading) => mayBe(recorded, reading))).toBe(true);
  }
});

/** Water under 1 atm of carbon dioxide has pH 3.9 (any data book); that the red is faint and slow is common practice, no source. */
test("carbon dioxide may redden damp blue litmus, over a carbonate in acid and over one that is heated", () => {
  const red = { formula: "CO2", evidence: "damp blue litmus turns red" } as const;
  expect(gasesOver("CO3^2-", "HCl(aq)", "damp blue litmus").readings.map(({ gas }) => gas)).toEqual([red, false]);
  expect(gasesOver("CO3^2-", "H2O(l)", "damp blue litmus").readings.map(({ gas }) => gas)).toEqual([false]);
  expect(gasOverHeated(heatSolid("NaHCO3", "strongly"), "damp blue litmus")).toEqual([red, false]);
});

test("papers that nitrogen dioxide may bleach give no opinion, and it is still named among the gases", () => {
  const shown = gasesOver("NO2-", "H2SO4(aq)", "acidified manganate(VII) paper");
  expect(shown.readings).toEqual([]);
  expect(shown.gases).toEqual(["NO2"]);
});

test("chlorine water bleaches damp litmus, unless alkali keeps the chlorine as chlorate(I)", () => {
  for (const paper of ["damp blue litmus", "damp red litmus"]) {
    const [bleached] = gasesOver("NO3-", "Cl2(aq)", paper).readings;
    expect(bleached.gas).toEqual({ formula: "Cl2", evidence: "damp litmus is bleached" });
    const [alkaline] = show(saltWith("NO3-"), [take, cm3("NaOH(aq)"), cm3("Cl2(aq)"), tryGas(paper)]);
    expect(alkaline.readings.map(({ gas }) => gas)).toEqual([false]);
  }
});
