import { describe, expect, test } from "vitest";
import { fromAddress, toAddress } from "../../../src/components/choose/choice-address.ts";
import { whitePrecipitates } from "../../engine/deduction/white-precipitates.ts";

const whole = whitePrecipitates(["P", "Q"]);
/** With formulas that an address must escape. */
const FORMULAS = ["ZnCl2", "Al2(SO4)3", "NaCl + KNO3", "MgSO4"];
const table = { ...whole, salts: FORMULAS.map((formula, index) => ({ ...whole.salts[index], formula })) };
const usual = { store: [0, 1, 2], samples: 2 };
const possible = [0, 1, 2, 3];
const read = (search: string) => fromAddress(table, usual, possible, 8, search);

describe("a teacher's choice in an address", () => {
  test.each([
    { store: [1, 2], samples: 2 },
    { store: [], samples: 5 },
    { store: [0, 1, 2, 3], samples: 1 },
  ])("comes back as it was: %j", (chosen) => {
    expect(read(toAddress(table, usual, chosen))).toEqual({ ...chosen, faults: [] });
  });

  test("says nothing of the page as built, and leaves other entries alone", () => {
    expect(toAddress(table, usual, usual)).toBe("");
    expect(toAddress(table, usual, usual, "from=mail&samples=4")).toBe("from=mail");
    expect(read("from=mail")).toEqual({ ...usual, faults: [] });
  });

  test("what cannot be read is said, and the rest is kept", () => {
    expect(read("store=ZnCl2,XeF2&samples=0")).toEqual({
      store: [0],
      samples: 2,
      faults: [
        "Samples: found “0”, expected a whole number from 1 to 8.",
        "Store: found “XeF2”, expected formulas of salts that can be ticked here.",
      ],
    });
    expect(read(`store=${"ZnCl2,".repeat(1000)}`).faults).toHaveLength(1);
  });
});
