/** What a department has of its own, in the steps of a paper that is entered: behaviour from the specification. */
import { expect, test } from "vitest";
import { atHouse, withReagent } from "../../../src/components/paper/house.ts";

const house = { strengths: { "NaOH(aq)": "0.5 mol/dm3" } };

test("a step takes the strength of the department's bottle where it names none", () => {
  expect(atHouse({ add: "NaOH(aq)", drops: 5 }, house)).toEqual({ add: "NaOH(aq)", drops: 5, at: "0.5 mol/dm3" });
  expect(atHouse({ add: "NaOH(aq)", drops: 5, at: "1 mol/dm3" }, house)).toMatchObject({ at: "1 mol/dm3" });
  expect(atHouse({ add: "constructor", drops: 5 }, house)).toEqual({ add: "constructor", drops: 5 });
  expect(atHouse({ warm: true }, house)).toEqual({ warm: true });
});

test("another reagent takes the strength of its own bottle, or none", () => {
  expect(withReagent({ add: "HCl(aq)", at: "2 mol/dm3", drops: 5 }, "NaOH(aq)", house)).toEqual({
    add: "NaOH(aq)",
    at: "0.5 mol/dm3",
    drops: 5,
  });
  expect(withReagent({ add: "NaOH(aq)", at: "0.5 mol/dm3", drops: 5 }, "HCl(aq)", house)).toEqual({
    add: "HCl(aq)",
    drops: 5,
  });
});
