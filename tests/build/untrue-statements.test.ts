/** Statements that read well and are not so, and procedures that cannot be worked out: each is a fault at its line. */
import { describe, expect, test } from "vitest";
import { type Edit, edited, faultsIn, placeOf } from "./broken.ts";

describe("nothing that the true salt would not show passes", () => {
  test.each([
    [
      "a solution of the wrong colour beside the right precipitate",
      "{ precipitate: white, solution: deep blue }",
      "b(i)",
    ],
    ["a colour where nothing changes", "{ solution: brown }", "c(i)"],
    ["a residue of what was never heated", "{ residue: { hot: yellow } }", "c(i)"],
    ["a gas tested for in a test without a gas test", "{ gas: none }", "c(i)"],
    ["a precipitate where nothing changes", "{ precipitate: white }", "c(i)"],
    ["bubbles where nothing changes", "{ effervescence: true }", "c(i)"],
    ["a flame where none was tried", "{ flame: yellow }", "c(i)"],
    ["a precipitate of the wrong colour", "{ precipitate: light blue }", "b(i)"],
  ])("%s: %s", (_, stated, cell) => {
    const was = cell === "c(i)" ? "    c(i): no visible change" : "    b(i): { precipitate: white }";
    const text = edited([was, `    ${cell}: ${stated}`]);
    const faults = faultsIn(text);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({
      what: `record R ${cell}`,
      line: placeOf(text, `    ${cell}: ${stated}\n    ${cell === "c(i)" ? "c" : "b"}(ii)`).line,
    });
  });

  test.each([
    ["the right gas by an absurd sign", "{ formula: NH3, evidence: brown gas }"],
    ["the right sign of another gas", "{ formula: CO2, evidence: damp red litmus turns blue }"],
    ["another gas with its own sign", "{ formula: CO2, evidence: limewater turns milky }"],
  ])("%s: %s", (_, gas) => {
    const text = edited(["    a(iii): { gas: NH3 }", `    a(iii): { gas: ${gas} }`]);
    expect(faultsIn(text)).toMatchObject([{ what: "record T a(iii)", line: placeOf(text, gas).line }]);
  });
});

describe("what the engine cannot work out is a fault at its place, never a stop of the build", () => {
  test.each([
    [
      "a reagent listed without constants",
      ["{ add: NaOH(aq), drops: 5 }", "{ add: CH3COOH(aq), drops: 5 }"],
      "CH3COOH(aq)",
    ],
    ["half a water of crystallisation", ["salt: ZnSO4", "salt: CaSO4*0.5H2O"], "CaSO4*0.5H2O"],
  ] as [string, Edit, string][])("%s", (_, edit, piece) => {
    const text = edited(edit);
    expect(faultsIn(text)[0].line).toBe(placeOf(text, piece).line);
  });

  test("a strength at which no equilibrium is found for some salt", () => {
    const text = edited(["0.1 mol/dm3, salt: ZnSO4", "20 mol/dm3, salt: ZnSO4"]);
    expect(() => faultsIn(text)).not.toThrow();
  });

  test("pieces of a solution, or a test that begins with nothing taken, are refused", () => {
    for (const text of [
      edited(["{ add: NaOH(aq), drops: 5 }", "{ add: NaOH(aq), pieces: 5 }"]),
      edited(["          - { take: 1 cm3 }\n", ""]),
    ]) {
      const [{ what }] = faultsIn(text);
      expect(what).toMatch(/^part a/);
    }
  });
});
