/** Notes and the last word of a practical: plain sentences with readable formulas, or a refusal that says what to do. */
import { expect, test } from "vitest";
import { faultsWith } from "./sound.ts";

const NOTE = ["parts", 0, "note"];

test("plain text with formulas is taken, beside a part and at the end", () => {
  for (const text of [
    "Lead makes PbCl2, which dissolves when hot, and PbSO4, which does not.",
    "It holds copper as [Cu(NH3)4]^2+ (deep blue), so look at X1 again.",
  ]) {
    expect(faultsWith(NOTE, text)).toBe("no fault");
    expect(faultsWith(["closing"], text)).toBe("no fault");
  }
});

test("markup, a formula that cannot be read, and a note of the wrong length are refused", () => {
  const told = [
    "The **first** line of this part proves nothing yet.",
    "Sulfate is SO4^2 and stays where it is in acid.",
    "Too short.",
    `${"Long ".repeat(81)}end.`,
  ].map((text) => faultsWith(NOTE, text));
  expect(told.join("\n")).toMatchInlineSnapshot(`
    "parts > 0 > note: found Markdown or HTML, expected plain text; a formula is written SO4^2- and needs no tag
    parts > 0 > note: Cannot read "SO4^2": found "^2" at character 4, expected a charge such as ^2+ or ^3-.
    parts > 0 > note: expected a sentence, of at least 20 characters
    parts > 0 > note: expected at most 400 characters: a margin is narrow"
  `);
});
