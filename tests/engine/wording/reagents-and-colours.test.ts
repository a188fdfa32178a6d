/** Reagents named in a record are no gases; a colour that goes leaves a colourless liquid; of two colours in turn the last is seen. Common practice, no source. */
import { describe, expect, test } from "vitest";
import { observation } from "../../../src/engine/practical.ts";
import { type AskedOf, readWords } from "../../../src/engine/wording/read-words.ts";

const reads = (text: string, asked: AskedOf, short: object | string) => {
  const { seen, questions } = readWords(text, asked);
  expect(seen).toEqual(observation.parse(short));
  expect(questions).toEqual([]);
};

describe("a reagent is no gas", () => {
  test.each<[string, object | string]>([
    [
      "white precipitate dissolves in dilute ammonia, colourless solution",
      { precipitate: "white", fate: "dissolves", solution: "colourless" },
    ],
    ["no change with ammonia", "no visible change"],
    ["no ppt with NH3", { precipitate: "none" }],
    ["white ppt insoluble in HCl", { precipitate: "white", fate: "remains" }],
    ["cream ppt, partly soluble in conc. ammonia", { precipitate: "cream", fate: "partly dissolves" }],
    ["with chlorine water the solution turns orange", { solution: "orange" }],
    ["with hydrogen peroxide the solution turns brown", { solution: "brown" }],
    ["ammonia: white ppt, insoluble", { precipitate: "white", fate: "remains" }],
    ["effervescence with HCl", { effervescence: true }],
    ["with HCl effervescence, limewater milky: carbon dioxide", { effervescence: true, gas: "CO2" }],
  ])("%s", (text, seen) => reads(text, {}, seen));

  test.each(["ammonia given off", "ammonia", "effervescence, ammonia", "smell of ammonia", "bubbles of chlorine"])(
    "but a gas is asked for its test: %s",
    (text) => {
      const { seen, questions } = readWords(text);
      expect(seen?.gas).toBeTruthy();
      expect(questions.join(" ")).toMatch(/How was (?:ammonia|chlorine) shown/);
    },
  );
});

describe("a colour that goes", () => {
  test.each([
    "purple colour disappears",
    "brown colour disappears",
    "purple colour goes",
    "colour fades",
    "is decolourised",
    "loses its colour",
    "the purple colour of the manganate is lost",
    "brown iodine colour fades away",
    "purple fades to colourless",
    "Purple colour goes; colourless solution",
  ])("%s", (text) => reads(text, {}, { solution: "colourless" }));

  test("beside a precipitate that forms", () =>
    reads("blue colour disappears and white ppt forms", {}, { precipitate: "white", solution: "colourless" }));

  test("a colour that comes in its place stands", () =>
    reads("orange colour disappears, green solution", {}, { solution: "green" }));

  test("a precipitate that disappears dissolves", () =>
    reads(
      "white ppt disappears to a colourless solution",
      {},
      {
        precipitate: "white",
        fate: "dissolves",
        solution: "colourless",
      },
    ));

  test("a colour that does not go is not read as gone", () =>
    expect(readWords("purple colour does not disappear").seen).toBeUndefined());

  test("manganate paper whose colour goes shows sulfur dioxide", () =>
    expect(
      readWords("purple colour disappears", { gas: true, gasTest: "acidified manganate(VII) paper" }).seen,
    ).toMatchObject({ gas: { formula: "SO2" } }));
});

describe("of two colours in turn the last is the liquid's", () => {
  test.each<[string, string]>([
    ["Orange solution turns green", "green"],
    ["purple solution turns colourless", "colourless"],
    ["blue solution turned colourless", "colourless"],
    ["colourless solution turns yellow", "yellow"],
    ["pale green solution slowly becomes yellow", "yellow"],
    ["blue-black with starch", "blue-black"],
    ["starch: blue-black", "blue-black"],
    ["starch solution turns blue-black", "blue-black"],
  ])("%s", (text, solution) => reads(text, {}, { solution }));
});

describe("a colour that the liquid is said not to have", () => {
  test.each([
    "no blue-black with starch",
    "no blue-black colour with starch",
    "no blue-black colour seen with starch solution",
    "did not go blue-black with starch",
    "with starch not blue-black",
    "no colour with starch",
    "no change with starch",
    "no blood-red colour",
    "no red colour with potassium thiocyanate",
  ])("alone it is a negative result: %s", (text) => reads(text, {}, "no visible change"));

  test.each<[string, object]>([
    ["white ppt, no blue-black with starch", { precipitate: "white" }],
    ["yellow solution, no blue-black colour with starch", { solution: "yellow" }],
  ])("beside what is there it adds nothing: %s", (text, seen) => reads(text, {}, seen));

  test.each(["no brown colour of the gas", "no lilac colour in the flame", "not blue"])("asked: %s", (text) => {
    expect(readWords(text, {}).seen).toBeUndefined();
    expect(readWords(text, {}).questions).toHaveLength(1);
  });
});

describe("of two colours in turn of a precipitate", () => {
  test.each([
    ["blue ppt turns black", "black"],
    ["white ppt, which turned brown", "brown"],
    ["blue ppt goes black on heating", "black"],
  ])("one that was in the tube has the last: %s", (text, precipitate) => reads(text, { solid: true }, { precipitate }));

  test.each([
    ["blue ppt turns black", "blue"],
    ["white ppt turns brown", "white"],
    ["blue precipitate turning pink", "blue"],
  ])("of one that forms the first is kept, and that is said: %s", (text, precipitate) => {
    const { seen, questions } = readWords(text);
    expect(seen).toEqual(observation.parse({ precipitate }));
    expect(questions.join(" ")).toMatch(/only the first is kept/);
  });
});
