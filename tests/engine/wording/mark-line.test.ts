/** Marks for a line of a record: common practice of marking, no source; behaviour from the specification. */
import { describe, expect, test } from "vitest";
import { type Colour, observation } from "../../../src/engine/practical.ts";
import { markLine } from "../../../src/engine/wording/mark-line.ts";
import { type AskedOf, readWords } from "../../../src/engine/wording/read-words.ts";

const marked = (text: string, seen: (object | string)[], asked: AskedOf = {}) =>
  markLine(
    text === "" ? undefined : readWords(text, asked),
    seen.map((one) => observation.parse(one)),
  );
const score = (text: string, seen: (object | string)[], asked: AskedOf = {}) =>
  marked(text, seen, asked)
    .marks.map(({ earned }) => (earned ? 1 : 0))
    .join("");
const reasons = (text: string, seen: (object | string)[], asked: AskedOf = {}) =>
  marked(text, seen, asked)
    .marks.flatMap(({ reason }) => reason ?? [])
    .join(" ");

const DISSOLVED = { fate: "dissolves", solution: "colourless" };
const AMMONIA = { gas: "NH3" };

describe("each thing seen is a mark of its own", () => {
  test.each<[string, (object | string)[], AskedOf, string]>([
    ["white ppt", [{ precipitate: "white" }], {}, "1"],
    ["pale blue ppt", [{ precipitate: "light blue" }], {}, "1"],
    ["green ppt", [{ precipitate: "white" }], {}, "0"],
    ["ppt dissolves to a colourless soln", [DISSOLVED], { solid: true }, "11"],
    ["ppt dissolves to a clear soln", [DISSOLVED], { solid: true }, "10"],
    ["ppt remains", [DISSOLVED], { solid: true }, "00"],
    ["damp red litmus turns blue, ammonia", [AMMONIA], { gas: true }, "11"],
    ["damp red litmus turns blue", [AMMONIA], { gas: true }, "10"],
    ["ammonia given off", [AMMONIA], { gas: true }, "01"],
    ["no visible change", ["no visible change"], {}, "1"],
    ["no reaction", ["no visible change"], {}, "0"],
    ["white ppt insol", ["no visible change"], {}, "0"],
    ["fizzing, limewater milky, carbon dioxide", [{ effervescence: true, gas: "CO2" }], { gas: true }, "111"],
    ["no change, red litmus stays red", [{ none: true, gas: "none" }], { gas: true }, "11"],
    ["no change", [{ none: true, gas: "none" }], { gas: true }, "10"],
    ["yellow hot, white cold", [{ residue: { hot: "yellow", cold: "white" } }], { heated: true }, "11"],
    ["white residue", [{ residue: { hot: "yellow", cold: "white" } }], { heated: true }, "01"],
    ["lilac", [{ flame: "lilac" }], { flame: true }, "1"],
    ["", [DISSOLVED], {}, "00"],
  ])("%s against %j", (text, seen, asked, marks) => {
    expect(score(text, seen, asked)).toBe(marks);
  });
});

test("a mark that is lost has its reason", () => {
  expect(reasons("ppt dissolves to a clear soln", [DISSOLVED], { solid: true })).toContain('"clear" is no colour');
  expect(reasons("ammonia given off", [AMMONIA], { gas: true })).toContain("the mark is for its test");
  expect(reasons("green ppt", [{ precipitate: "white" }])).toBe("The precipitate was white, not green.");
  expect(reasons("no reaction", ["no visible change"])).toContain("is a conclusion");
  expect(reasons("", [{ precipitate: "white" }])).toContain("Nothing that could be read");
});

test("what was not there is said, and what else may be seen is accepted whole", () => {
  expect(marked("white ppt and fizzing", [{ precipitate: "white" }]).besides).toEqual(["effervescence"]);
  const either = [{ precipitate: "white" }, "no visible change"];
  expect(score("no visible change", either)).toBe("1");
  expect(marked("no visible change", either).marks[0].words).toBe("no visible change");
});

describe("naming several things earns no mark", () => {
  const WHITE = { precipitate: "white" };
  test.each<[string, (object | string)[], AskedOf, string]>([
    ["white precipitate, cream precipitate, yellow precipitate", [WHITE], {}, "0"],
    ["white ppt and fizzing and pale yellow ppt", [WHITE], {}, "0"],
    ["white or cream ppt", [{ precipitate: "cream" }], {}, "0"],
    ["white/cream ppt", [{ precipitate: "cream" }], {}, "0"],
    ["creamish-white ppt", [WHITE], {}, "0"],
    ["creamy white ppt", [{ precipitate: "cream" }], {}, "0"],
    ["creamy ppt", [{ precipitate: "cream" }], {}, "1"],
    ["yellowish white ppt", [{ precipitate: "cream" }], {}, "1"],
    ["white gelatinous ppt, a thick white ppt", [WHITE], {}, "1"],
    ["solution turns blue, white ppt", [{ precipitate: "white", solution: "blue" }], {}, "11"],
    ["ppt remains, ppt dissolves, colourless solution", [DISSOLVED], { solid: true }, "01"],
    ["blue solution, green solution", [{ solution: "blue" }], {}, "0"],
    ["lilac, red, green", [{ flame: "lilac" }], { flame: true }, "0"],
    ["damp red litmus turns blue: ammonia, chlorine", [AMMONIA], { gas: true }, "10"],
    ["red litmus turns blue, relights a glowing splint: ammonia", [AMMONIA], { gas: true }, "01"],
    ["red litmus stays red, red litmus turns blue: ammonia", [AMMONIA], { gas: true }, "01"],
    ["red litmus turns blue, limewater stays clear: ammonia", [AMMONIA], { gas: true }, "11"],
    ["red litmus turns blue, cobalt chloride paper turns pink: ammonia", [AMMONIA], { gas: true }, "11"],
  ])("%s against %j", (text, seen, asked, marks) => {
    expect(score(text, seen, asked)).toBe(marks);
  });

  test("and says why", () => {
    expect(reasons("white ppt, cream ppt", [WHITE])).toContain("exclude one another");
    expect(readWords("creamish-white ppt").questions.join(" ")).toContain("which was it?");
  });
});

describe("a tube in which nothing happened", () => {
  const NOTHING = ["no visible change"];
  test.each<[string, AskedOf, string]>([
    ["no ppt", { solid: false }, "1"],
    ["no ppt, fizzing", { solid: false }, "0"],
    ["precipitate remains", { solid: false }, "0"],
    ["precipitate remains", { solid: true }, "1"],
    ["stays the same colour", { solid: false }, "1"],
    ["solution remains the same", { solid: false }, "1"],
    ["no colour change", { solid: false }, "1"],
  ])("%s %j", (text, asked, marks) => {
    expect(score(text, NOTHING, asked)).toBe(marks);
  });

  test.each<[string, Colour, string]>([
    ["no visible change", "colourless", "0"],
    ["no visible change (stays brown)", "colourless", "1"],
    ["stays brown", "colourless", "1"],
    ["solution turns brown", "colourless", "1"],
    // What was in the tube has kept its own colour, or nearly.
    ["no visible change", "brown", "1"],
  ])("a coloured reagent that keeps its colour is named with it: %s in a liquid that was %s", (text, liquid, marks) => {
    const may = [observation.parse({ solution: "brown" }), { none: true as const, stays: "brown" as const }];
    const { marks: given } = markLine(readWords(text, { solid: false }), may, { liquid });
    expect(given.map(({ earned }) => (earned ? 1 : 0)).join("")).toBe(marks);
  });

  // Common practice, no source: what is in the tube is as good as saying that nothing changed, if it is right.
  test.each<[string, Colour | undefined, string]>([
    ["No ppt, colourless solution", "colourless", "1"],
    ["no ppt, solution stays blue", "blue", "1"],
    ["No ppt, colourless solution", "blue", "0"],
    ["No ppt, no effervescence, colourless solution", "colourless", "1"],
    ["No ppt, colourless solution", undefined, "1"],
    ["colourless solution", "colourless", "0"],
    ["no ppt, colourless solution, red litmus turns blue", "colourless", "0"],
  ])("%s in a liquid that is %s", (text, liquid, marks) => {
    const line = markLine(readWords(text, { solid: false }), [observation.parse("no visible change")], { liquid });
    expect(line.marks.map(({ earned }) => (earned ? 1 : 0)).join("")).toBe(marks);
  });

  test("a colour that is not the liquid's loses the mark and is named", () => {
    const read = readWords("no ppt, colourless solution", { solid: false });
    const { marks } = markLine(read, [observation.parse("no visible change")], { liquid: "blue" });
    expect(marks[0].reason).toBe("The solution was blue, not colourless.");
  });

  test("what stays the same is read as no change, as the end report needs it", () => {
    expect(readWords("stays the same colour", { solid: false }).seen).toEqual({ none: true });
  });
});
