/** Observations in the words of the trade (mark schemes' usual words, from memory). */
import { expect, test } from "vitest";
import { GASES } from "#words/observation.ts";
import { observation } from "../../../src/engine/practical.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";

test.each<[written: unknown, words: string]>([
  ["no visible change", "no visible change"],
  [{ precipitate: "white" }, "white precipitate"],
  [{ precipitate: { colour: "white", amount: "slight" } }, "faint white precipitate"],
  [{ precipitate: "none" }, "no precipitate"],
  [{ precipitate: "white", fate: "dissolves" }, "white precipitate, it dissolves"],
  [
    { precipitate: "brown", fate: "dissolves", solution: "colourless" },
    "brown precipitate, it dissolves, giving a colourless solution",
  ],
  [{ fate: "remains" }, "precipitate remains"],
  [{ fate: "partly dissolves" }, "some of the precipitate dissolves"],
  [{ fate: "dissolves", solution: "deep blue" }, "precipitate dissolves, giving a deep blue solution"],
  [{ precipitate: "light blue", fate: "partly dissolves" }, "light blue precipitate, some of it dissolves"],
  [{ precipitate: "light blue", fate: "remains" }, "light blue precipitate, it remains"],
  [{ solution: "brown" }, "solution turns brown"],
  [{ effervescence: true }, "effervescence"],
  [{ effervescence: true, gas: "CO2" }, "effervescence, limewater turns milky"],
  [{ gas: "NH3" }, "damp red litmus turns blue (ammonia)"],
  [{ gas: { formula: "SO2", evidence: "limewater turns milky" } }, "limewater turns milky"],
  [{ gas: { formula: "SO2", evidence: "damp blue litmus turns red" } }, "damp blue litmus turns red (sulfur dioxide)"],
  [
    { gas: { formula: "CO2", evidence: "limewater turns milky, then clear in excess" } },
    "limewater turns milky, then clear in excess",
  ],
  [{ indicator: "red" }, "indicator turns red"],
  [{ gas: "none" }, "gas test shows nothing"],
  [{ residue: { hot: "yellow", cold: "white" } }, "residue yellow when hot, white when cold"],
  [{ flame: "none" }, "no flame colour"],
  [{ flame: "lilac" }, "lilac flame"],
])("%j: %s", (written, words) => {
  expect(phrase(observation.parse(written))).toBe(words);
});

test.each<[written: unknown, words: string]>([
  [{ fate: "dissolves", solution: "colourless" }, "solid dissolves, giving a colourless solution"],
  [{ fate: "remains" }, "solid remains"],
  [{ fate: "partly dissolves" }, "some of the solid dissolves"],
  [{ precipitate: "white", fate: "dissolves" }, "white precipitate, it dissolves"],
])("of a dry sample, %j: %s", (written, words) => {
  expect(phrase(observation.parse(written), "solid")).toBe(words);
});

test("a tested gas that is not there leaves the rest of the reading standing", () => {
  expect(phrase({ none: true, gas: false })).toBe("no visible change, gas test shows nothing");
  expect(phrase({ fate: "remains", gas: false })).toBe("precipitate remains, gas test shows nothing");
});

test("to say that there was no fizzing is not to say that nothing changed", () => {
  expect(phrase({ effervescence: false })).toBe("no effervescence");
  expect(phrase({ effervescence: false, precipitate: { colour: "white", amount: "plain" } })).toBe(
    "no effervescence, white precipitate",
  );
});

test("no words are empty, doubled or without a name for the gas", () => {
  for (const name of Object.values(GASES)) expect(name).toMatch(/^[a-z ]+$/);
});
