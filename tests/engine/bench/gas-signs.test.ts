/** What each way of testing a gas shows. Boards' gas tables: chlorine bleaches damp litmus; ammonia turns the red paper blue. */
import { expect, test } from "vitest";
import { signOf } from "../../../src/engine/bench/gas-signs.ts";

test("damp litmus of either colour is bleached by chlorine, and not by the other acid gases", () => {
  const bleached = { formula: "Cl2", evidence: "damp litmus is bleached" };
  expect(signOf("damp blue litmus", ["Cl2"])).toEqual(bleached);
  expect(signOf("damp red litmus", ["Cl2"])).toEqual(bleached);
  expect(signOf("damp blue litmus", ["HCl"])?.evidence).toBe("damp blue litmus turns red");
  expect(signOf("damp red litmus", ["HCl"])).toBeUndefined();
});
