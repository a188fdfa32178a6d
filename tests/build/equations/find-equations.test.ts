import { expect, test } from "vitest";
import { findEquations } from "../../../src/build/equations/find-equations.ts";

const at = (page: string) =>
  findEquations("page.mdx", page).equations.map(({ text, offset, where }) => [
    where,
    text,
    page.slice(offset, offset + text.length) === text,
  ]);

test("fences are found wherever Markdown allows one, line by line and without remarks", () => {
  const page = [
    "---",
    "title: A made-up page",
    "---",
    "",
    "- in a list",
    "",
    "  ~~~~equation",
    "  Ag+(aq) + Cl-(aq) -> AgCl(s)  # white",
    "",
    "  Ag+(aq) + Cl-(aq) -> AgCl(s)",
    "  ~~~~",
    "",
    "> ```equation wide",
    "> H2O(l) -> H2O(g)",
    "> ```",
    "",
    "<details>",
    "",
    "```equation",
    "I2(s) -> I2(g)",
    "```",
    "",
    "</details>",
  ].join("\n");
  expect(at(page)).toEqual([
    ["fence", "Ag+(aq) + Cl-(aq) -> AgCl(s)", true],
    ["fence", "Ag+(aq) + Cl-(aq) -> AgCl(s)", true],
    ["fence", "H2O(l) -> H2O(g)", true],
    ["fence", "I2(s) -> I2(g)", true],
  ]);
  const [first, second] = findEquations("page.mdx", page).equations;
  expect(second.offset - first.offset).toBe(page.split("\n").slice(7, 9).join("\n").length + 1);
});

test("equations in sentences are found with their place, in quotes of either kind and in braces", () => {
  const page = `<Equation of="I2 -> I2" /> or <Equation of='K -> K' /> or <Equation of={"Br2 -> Br2"} />`;
  expect(at(page)).toEqual([
    ["sentence", "I2 -> I2", true],
    ["sentence", "K -> K", true],
    ["sentence", "Br2 -> Br2", true],
  ]);
});

test("what only shows how to write an equation is no equation", () => {
  const page = [
    "````md",
    "```equation",
    "A -> B",
    "```",
    '<Equation of="A -> B" />',
    "````",
    "",
    '`<Equation of="A" />`',
  ];
  expect(findEquations("page.mdx", page.join("\n"))).toEqual({ equations: [], faults: [] });
});

test("lines that end as in files from Windows", () => {
  const page = "Text.\r\n\r\n```equation\r\nI2(s) -> I2(g) # violet\r\n```\r\n";
  expect(at(page)).toEqual([["fence", "I2(s) -> I2(g)", true]]);
});
