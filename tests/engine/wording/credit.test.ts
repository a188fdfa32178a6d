/** One mark for each thing seen: common practice of marking, no source. */
import { expect, test } from "vitest";
import { observation } from "../../../src/engine/practical.ts";
import { creditsIn } from "../../../src/engine/wording/credit.ts";

test.each<[object | string, string[]]>([
  ["no visible change", ["no visible change"]],
  [{ precipitate: "white" }, ["white precipitate"]],
  [{ precipitate: { colour: "white", amount: "slight" } }, ["faint white precipitate"]],
  [{ fate: "dissolves", solution: "colourless" }, ["precipitate dissolves", "colourless solution"]],
  [{ gas: "NH3" }, ["damp red litmus turns blue", "named: ammonia"]],
  [{ none: true, gas: "none" }, ["no visible change", "gas test shows nothing"]],
  [
    { effervescence: true, gas: "CO2", solution: "blue" },
    ["effervescence", "blue solution", "limewater turns milky", "named: carbon dioxide"],
  ],
  [
    { residue: { hot: "yellow", cold: "white" }, droplets: true },
    ["drops of liquid on the cool wall", "yellow when hot", "white when cold"],
  ],
  [{ flame: "lilac" }, ["lilac flame"]],
])("%j", (seen, credits) => {
  expect(creditsIn(observation.parse(seen))).toEqual(credits);
});

test("a dry sample is the solid, not a precipitate", () => {
  expect(creditsIn(observation.parse({ fate: "dissolves" }), "solid")).toEqual(["solid dissolves"]);
});
