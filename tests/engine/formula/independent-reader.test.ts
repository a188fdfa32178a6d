/**
 * Atoms, charges and molar masses against the npm package mf-parser, a reader of molecular formulas made for mass spectrometry. It shares
 * nothing with ours: its own grammar, and weights that it adds up from the masses and abundances of isotopes.
 */
import { MF } from "mf-parser";
import { describe, expect, test } from "vitest";
import { atomicWeights } from "../../../src/engine/constants/atomic-weights.ts";
import { molarMass } from "../../../src/engine/formula/molar-mass.ts";
import { parseFormula } from "../../../src/engine/formula/parse.ts";
import { knownFormulas } from "./known-formulas.ts";

/** What the package reads in a formula of ours: it has no states, takes `[ ]` for isotopes, and writes charges in brackets. */
function read(formula: string) {
  const text = formula
    .replace(/\((?:s|aq|l|g)(?:, [^()]*)?\)$/, "")
    .replace(/(?:\^(\d+))?([+-])$/, "($1$2)")
    .replaceAll("[", "(")
    .replaceAll("]", ")")
    .replaceAll("*", " . ");
  const { atoms, charge, mass } = new MF(text).getInfo() as { atoms: object; charge: number; mass: number };
  return { atoms, charge, mass };
}

/**
 * Mercury alone needs more: its abundances in the package are those behind the weight 200.59(2) of before 2011, ours belongs to
 * 200.592(3) (CIAAW, from memory). The older uncertainty, g/mol.
 */
const OLDER_ABUNDANCES: Readonly<Record<string, number>> = { Hg: 0.02 };

/**
 * How far our molar mass may be off, g/mol: half a unit of the last figure that our table prints, for every atom. The abridged weights are
 * rounded to that figure; those of the package are not rounded.
 */
function printedTo(formula: string): number {
  const { elements } = parseFormula(formula);
  return Object.entries(elements).reduce((sum, [symbol, count]) => {
    const decimals = String(atomicWeights[symbol].weight).split(".")[1]?.length ?? 0;
    return sum + count * (OLDER_ABUNDANCES[symbol] ?? 10 ** -decimals / 2);
  }, 0);
}

test("the constants hold hundreds of formulas, of every kind the notation has", () => {
  const all = new Set(Object.values(knownFormulas).flat());
  expect(all.size).toBeGreaterThan(400);
  for (const kind of [/\*\d*H2O/, /\*0\.5H2O/, /\(s, /, /\[.*\]\^/, /\)\d*\(/, /[^\]]\[/]) {
    expect([...all].filter((formula) => kind.test(formula)).length, String(kind)).toBeGreaterThan(0);
  }
});

describe.each(Object.entries(knownFormulas))("%s", (_, formulas) => {
  test("have the same atoms and charge", () => {
    const ours = formulas.map((formula) => {
      const { elements, charge } = parseFormula(formula);
      return [formula, elements, charge];
    });
    const theirs = formulas.map((formula) => {
      const { atoms, charge } = read(formula);
      return [formula, atoms, charge];
    });
    expect(ours).toEqual(theirs);
  });

  test("weigh the same to the last figure of our table", () => {
    const off = formulas.filter(
      (formula) => !(Math.abs(molarMass(formula) - read(formula).mass) <= printedTo(formula)),
    );
    expect(off).toEqual([]);
  });
});

// A carbon more is noticed, and so is a charge.
test("the reader tells formulas apart", () => {
  expect(read("[Fe(CN)6]^4-")).toMatchObject({ atoms: { Fe: 1, C: 6, N: 6 }, charge: -4 });
  expect(Math.abs(molarMass("CaCO3") - read("CaC2O4").mass)).toBeGreaterThan(printedTo("CaCO3"));
});
