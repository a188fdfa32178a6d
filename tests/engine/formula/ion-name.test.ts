import { expect, test } from "vitest";
import { ionNames } from "#words/ion-names.ts";
import { ionName, saltName } from "../../../src/engine/formula/ion-name.ts";
import { parseFormula } from "../../../src/engine/formula/parse.ts";

// IUPAC Red Book 2005 names, from memory.
test.each([
  ["Fe^2+", "iron(II)"],
  ["Fe^3+", "iron(III)"],
  ["NH4+", "ammonium"],
  ["SO4^2-", "sulfate"],
  ["SO3^2-", "sulfite"],
  ["HCO3-", "hydrogencarbonate"],
  ["CrO4^2-", "chromate(VI)"],
  ["[Al(OH)4]-", "tetrahydroxidoaluminate"],
])("%s is %s", (ion, name) => {
  expect(ionName(ion)).toBe(name);
});

test("a salt is named after its cation, then its anion", () => {
  expect(saltName("NH4+", "SO4^2-")).toBe("ammonium sulfate");
  expect(saltName("Cu^2+", "NO3-")).toBe("copper(II) nitrate");
});

test.each(Object.keys(ionNames))("%s is the formula of an ion", (ion) => {
  expect(parseFormula(ion).charge).not.toBe(0);
});

test("names are not shared", () => {
  const names = Object.values(ionNames);
  expect(new Set(names).size).toBe(names.length);
});

test.each([
  ["an unknown ion", () => ionName("Fe2+"), 'No name for the ion "Fe2+"'],
  ["a word that every object knows", () => ionName("constructor"), 'No name for the ion "constructor"'],
  ["a salt the wrong way round", () => saltName("Cl-", "Na+"), "expected a cation"],
  ["a salt of two cations", () => saltName("Na+", "K+"), "expected an anion"],
])("%s is refused", (_, call, words) => {
  expect(call).toThrow(words);
});
