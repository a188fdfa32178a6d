import { describe, expect, test } from "vitest";
import { basis, type Reaction, reactions, sources } from "../../../src/engine/constants/log-k/index.ts";
import { moreReactions } from "../../../src/engine/constants/log-k/more.ts";
import { imbalance, parseEquation, type Term } from "../../../src/engine/formula/equation.ts";
import constantsUsed from "../../reference/constants-used.json";

const components = new Set(basis.map(({ id }) => id));

/** The species a row is about: it stands first on its own side. */
function subject(row: Reaction): Term {
  const { left, right } = parseEquation(row.reaction);
  return row.phase === "aqueous" ? right[0] : left[0];
}

const id = (row: Reaction) => subject(row).formula.text;

describe.each(reactions)("$reaction", (row) => {
  test("balances in atoms and charge", () => {
    expect(imbalance(parseEquation(row.reaction))).toEqual({ elements: {}, charge: 0 });
  });

  test("is one mole of a species and otherwise basis components", () => {
    const { left, right } = parseEquation(row.reaction);
    const strangers = [...left, ...right].filter(({ formula }) => !components.has(formula.text));
    expect(strangers).toEqual([{ coefficient: 1, formula: subject(row).formula }]);
  });

  test("has the state of its phase, and no solid or gas as an ion", () => {
    const { state, charge } = subject(row).formula;
    const allowed = { aqueous: [undefined, "aq"], solid: ["s"], gas: ["g"] }[row.phase];
    expect(allowed).toContain(state);
    if (row.phase !== "aqueous") expect(charge).toBe(0);
  });

  test("has a source, numbers and a single colour", () => {
    expect(Object.keys(sources)).toContain(row.source);
    expect(Number.isFinite(row.logK)).toBe(true);
    expect(row.dH === null || Number.isFinite(row.dH)).toBe(true);
    expect(row.colour).toMatch(/^[a-z-]+( [a-z-]+)*$/);
  });

  test("says why where it does not form in minutes", () => {
    expect(row.formsInMinutes || row.why !== undefined).toBe(true);
  });
});

test("no species has two rows", () => {
  const ids = [...components, ...reactions.map(id)];
  expect(ids.filter((one, at) => ids.indexOf(one) !== at)).toEqual([]);
});

test("the charge of every basis component is that of its formula", () => {
  for (const { id, charge } of basis) expect(parseEquation(`${id} = ${id}`).left[0].formula.charge, id).toBe(charge);
});

test("every source is used, and rows of remembered sources say so", () => {
  const used = new Set(reactions.map(({ source }) => source));
  expect([...used].sort()).toEqual(Object.keys(sources).sort());
  const silent = reactions.filter(({ source, memory }) => sources[source].includes("from memory") && !memory);
  expect(silent.map(id)).toEqual([]);
});

// tests/reference/README.md: the constants with which the open equilibrium code solved its mixtures.
test("log K of what forms in minutes is that of the reference solutions", () => {
  const further = new Set(moreReactions.map(id));
  const ours = reactions
    .filter((row) => row.formsInMinutes && !further.has(id(row)))
    .map((row) => [id(row), row.logK] as const);
  const theirs = constantsUsed.map(({ id, logK }) => [id, logK] as const);
  expect(theirs).toHaveLength(197);
  expect(Object.fromEntries(ours)).toEqual(Object.fromEntries(theirs));
});
