import { expect, test } from "vitest";
import { storeHazard } from "../../../src/engine/planning/store-hazards.ts";

const of = (cation: string, anion: string) => storeHazard({ cations: [cation], anions: [anion] });

test("ammonium nitrate is not heated (common practice, no source), and its bottle is an oxidiser", () => {
  expect(of("NH4+", "NO3-")?.heat).toMatch(/explode/);
  expect(of("NH4+", "NO3-")?.bottle).toMatch(/oxidiser/);
});

test("barium chloride is toxic if swallowed (harmonised classification, from memory)", () => {
  expect(of("Ba^2+", "Cl-")?.bottle).toMatch(/toxic/);
});

test("nothing is said of table salt, nor of what no store keeps", () => {
  expect(of("Na+", "Cl-")).toBeUndefined();
  expect(of("Fe^3+", "SO3^2-")).toBeUndefined();
});

test("a salt of cobalt that no store keeps is still not heated (classification of cobalt dust, from memory)", () => {
  expect(of("Co^2+", "SO3^2-")).toEqual({ heat: expect.stringMatching(/cancer/) });
});

test("a mixture is not its salts: nothing is looked up for it but the ions that are never heated", () => {
  expect(storeHazard({ cations: ["NH4+", "Na+"], anions: ["NO3-", "Cl-"] })).toEqual({
    heat: expect.stringMatching(/explode/),
  });
});
