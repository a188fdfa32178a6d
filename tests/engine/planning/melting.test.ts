/** A heated solid that melts: melting points of the CRC Handbook, from memory, as the rows of `MELTING_POINTS` say. */
import { expect, test } from "vitest";
import { isUnsafeOn } from "../../../src/engine/bench/unsafe-on.ts";
import { planBench } from "../../../src/engine/planning/plan-bench.ts";
import { CHOICE, planned, tableOf } from "./small-procedure.ts";

const heated = (how: "gently" | "strongly", ...formulas: string[]) => {
  const steps = [{ take: "0.3 g" }, { heat: how }];
  const procedure = planned([{ label: "a", title: "heat", tests: [{ steps }] }], { letters: ["P"], given: "solid" });
  const salts = formulas.map((formula) => ({ formula, cations: [formula], anions: [] }));
  return planBench(procedure, tableOf(procedure, {}, salts), CHOICE).cautions.filter((text) =>
    /hold the tube level/.test(text),
  );
};

test("what melts at the heat asked for is named, hydrates in their own water too", () => {
  // KNO3 334 C, Cu(NO3)2.3H2O 114 C, Na2S2O3.5H2O 48 C; CaCO3 does not melt, NaCl melts at 801 C, above any sample here.
  expect(heated("strongly", "KNO3", "CaCO3", "NaCl", "Cu(NO3)2", "Na2S2O3")).toEqual([
    "Of what a sample heated dry may be, KNO3, Cu(NO3)2 and Na2S2O3 melt: as soon as it turns liquid hold the tube level, so that nothing hot runs to the mouth.",
  ]);
  expect(heated("gently", "KNO3")).toEqual([]);
  expect(heated("strongly", "NaCl", "CaCO3")).toEqual([]);
  expect(heated("strongly", "KNO3", "NaNO3", "LiNO3", "PbCl2", "ZnCl2")[0]).toContain(
    "KNO3, NaNO3, LiNO3 and 2 more melt",
  );
});

test.each(["Pb^2+", "Co^2+", "Ni^2+"])("no flame test on %s", (cation) => {
  expect(isUnsafeOn([{ do: "flame" }], { cations: [cation], anions: ["SO4^2-"] })).toBe(true);
});
