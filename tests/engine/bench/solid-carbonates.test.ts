/** Carbonates given as a solid, in acid and in a flame, from the reading to the conclusion. */
import { describe, expect, test } from "vitest";
import { cannotBe } from "../../../src/engine/bench/allowed-salts.ts";
import { asSample } from "../../../src/engine/bench/as-sample.ts";
import { contentNamed } from "../../../src/engine/bench/contents.ts";
import { predictSalt } from "../../../src/engine/bench/predict.ts";
import { saltOf } from "../../../src/engine/bench/salt.ts";
import { storeHazard } from "../../../src/engine/planning/store-hazards.ts";
import { procedure } from "../../../src/engine/practical.ts";
import { concluded } from "./concluded.ts";
import { cm3, equationsOf, test as gas, solve } from "./show.ts";

const ACID = [{ take: "0.1 g" }, cm3("HCl(aq)", 4), gas("limewater")];
const HEAT = [{ take: "0.5 g" }, { heat: "strongly" }, gas("limewater")];
const MILKY = { formula: "CO2", evidence: "limewater turns milky" } as const;

// Green powder; fizzes and dissolves to a blue solution in dilute acid; heated it turns black: textbooks, and Q144 of the
// published rows (from memory). What is sold is the basic carbonate: suppliers' name of it, from memory.
describe("the green powder sold as copper(II) carbonate", () => {
  const solid = { given: "solid" } as const;
  const salt = saltOf("Cu^2+", "CO3^2-");
  const shown = predictSalt(
    asSample(salt, solid),
    procedure.parse([
      { label: "a", title: "Acid", tests: [{ steps: ACID }] },
      { label: "b", title: "Heat", tests: [{ steps: HEAT }] },
    ]),
    solve,
  );

  test("can be given out, by either formula and with the hazard of its bottle", () => {
    expect(cannotBe(salt, solid, solve)).toBeUndefined();
    expect(contentNamed("CuCO3*Cu(OH)2")).toEqual(contentNamed("CuCO3"));
    expect(storeHazard(salt)?.bottle).toContain("Harmful if swallowed");
  });

  test("takes two protons for each copper in acid", () => {
    expect(equationsOf([...shown.values()])).toContain("Cu2(OH)2CO3(s) + 4 H+(aq) -> CO2(g) + 2 Cu^2+(aq) + 3 H2O(l)");
  });

  test.each(["blue", "pale blue"] as const)("is concluded from fizz, a %s solution and black oxide", (solution) => {
    const paper = {
      cations: ["Na+", "Mg^2+", "Cu^2+", "Zn^2+"],
      anions: ["CO3^2-", "Cl-", "SO4^2-"],
      parts: [[ACID], [HEAT]],
      given: "solid",
    } as const;
    expect(
      concluded(paper, {
        a: { effervescence: true, fate: "dissolves", solution, gas: MILKY },
        b: { residue: { hot: "black", cold: "black" }, gas: MILKY },
      }),
    ).toEqual(["CuCO3"]);
  });
});
