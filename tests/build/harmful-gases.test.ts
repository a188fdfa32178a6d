/** A gas that can harm reaches everyone who must be ready for it: the reader, the bench, the bench card and the preparation sheet. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { classPage } from "../../src/build/class-sheet.ts";
import { walkthrough } from "../../src/build/walkthrough.ts";
import { cautionsFor } from "../../src/components/carry-out/part-cautions.ts";
import { heatSolid } from "../../src/engine/bench/heat/heat-solid.ts";
import { GAS_SAFETY } from "../../src/engine/constants/gas-safety.ts";
import { createSolver } from "../../src/engine/equilibrium/solve.ts";
import { practical } from "../../src/engine/practical.ts";
import { ROOT } from "./broken.ts";

/** Invented: one jar, heated, of three sulfates. */
const jar = practical.parse({
  title: "The jar on the copper roof",
  summary: "One solid sulfate is heated gently and then strongly.",
  level: "core",
  minutes: 20,
  order: 9,
  samples: [{ label: "A", given: "solid", salt: "CuSO4*5H2O" }],
  paper: { cations: ["NH4+", "Cu^2+", "Zn^2+", "Na+"], anions: ["SO4^2-"] },
  parts: [{ label: "a", title: "Heat", tests: [{ steps: [{ take: "0.1 g" }, { heat: "strongly" }] }] }],
  record: { A: { a: { residue: { hot: "black", cold: "black" }, droplets: true } } },
});

test("sulfur trioxide of a heated sulfate", () => {
  const { table, plan, purposes } = walkthrough(jar);
  // All but sodium sulfate: textbook of the three sulfates, from memory; a trace of the dioxide only from that of zinc.
  const from = (gas: string) =>
    table.cells[0].comesOff.find((row) => row.gas === gas)?.salts.map((n) => table.salts[n].formula);
  expect(from("SO3")).toEqual(["(NH4)2SO4", "CuSO4"]);
  expect(from("SO2")).toEqual(["(NH4)2SO4", "CuSO4", "ZnSO4"]);
  expect(purposes.find(({ cell }) => cell === "a")?.gases).toEqual(expect.arrayContaining(["SO3", "SO2"]));
  expect(plan.gases.map(({ gas }) => gas)).toEqual(expect.arrayContaining(["SO3", "SO2"]));
  expect(plan.cautions).toEqual(expect.arrayContaining([GAS_SAFETY.SO3.hazard, GAS_SAFETY.SO2.hazard]));
  const told = classPage(jar, createSolver()).gases.find(({ gas }) => gas === "SO3");
  expect(told).toMatchObject({ tests: ["a"], hazard: GAS_SAFETY.SO3.hazard });
});

test("its page of caution stands beside the part, before all that is not toxic", () => {
  const [, frontmatter] = readFileSync(join(ROOT, "src/content/cautions/sulfur-trioxide.mdx"), "utf8").split("---\n");
  const page = { data: parse(frontmatter) as { covers: string[]; kind: string } };
  const heating = { data: { covers: ["heat solid"], kind: "operation" } };
  expect(cautionsFor(jar.parts[0], ["SO3"], [], [heating, page])).toEqual([page, heating]);
});

// Zinc sulfate loses its oxides of sulfur from about 700 C in thermogravimetry, well below 1 atm; from memory.
test("a trace is told of although the solid is said to stay", () => {
  expect(heatSolid("ZnSO4*7H2O", "strongly")).toMatchObject({ traces: ["SO2"], residue: { formula: "ZnSO4" } });
  expect(heatSolid("ZnSO4*7H2O", "gently").traces).toEqual([]);
  expect(heatSolid("NaCl", "strongly").traces).toEqual([]);
});
