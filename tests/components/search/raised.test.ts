import { expect, test } from "vitest";
import { stretchesOf } from "../../../src/components/search/raised.ts";

test.each([
  ["white", "white"],
  ["SO₄²⁻;", "SO<sub>4</sub><sup>2−</sup>;"],
  ["Na⁺", "Na<sup>+</sup>"],
  ["1 cm³ of [Cu(NH₃)₄]²⁺", "1 cm<sup>3</sup> of [Cu(NH<sub>3</sub>)<sub>4</sub>]<sup>2+</sup>"],
  ["", ""],
])("%s is drawn as %s", (text, drawn) => {
  expect(
    stretchesOf(text)
      .map((one) => (one.as ? `<${one.as}>${one.text}</${one.as}>` : one.text))
      .join(""),
  ).toBe(drawn);
});
