import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, test } from "vitest";
import { contrast, themeFaults } from "../../../src/build/department/theme-faults.ts";

const OURS = readFileSync(resolve("src/styles/ink.css"), "utf8");
const faultsIn = (theme: string) => themeFaults("department/theme.css", OURS, theme);

test.each([
  // By the definition in WCAG 2.2: black on white has 21, a colour on itself 1.
  ["#000000", "#ffffff", 21],
  ["#1a4f8a", "#1a4f8a", 1],
  // The grey that is given everywhere as the lightest with 4.5 on white; from memory.
  ["#767676", "#ffffff", 4.54],
])("%s on %s has a contrast of %d to 1", (one, other, ratio) => {
  expect(contrast(one, other)).toBeCloseTo(ratio, 2);
  expect(contrast(other, one)).toBeCloseTo(ratio, 2);
});

test("our own colours and a theme that gives light and dark their own pass", () => {
  expect(themeFaults("ink.css", "", OURS)).toEqual([]);
  expect(faultsIn(readFileSync(resolve("tests/department/quillstrand/theme.css"), "utf8"))).toEqual([]);
  expect(faultsIn("")).toEqual([]);
});

test("a colour for the light alone holds in the dark as well, where it cannot be read", () => {
  const [fault, ...more] = faultsIn(":root {\n  --fit: #1a4f8a;\n}\n");
  expect(more).toEqual([]);
  expect(fault).toMatchObject({
    line: 2,
    column: 3,
    what: "--fit on --paper, dark",
    stated: "#1a4f8a on #15191d",
    excerpt: "  --fit: #1a4f8a;",
  });
  expect(fault.found).toMatch(/^a contrast of 2\.\d to 1, expected at least 4\.5$/);
});

test("a ground that is too near our text is told at the ground; what is not #rrggbb is left alone", () => {
  expect(faultsIn(":root { --paper: #777777; }").map(({ what }) => what)).toEqual(["--ink on --paper, light"]);
  expect(faultsIn(":root { --paper: rebeccapurple; --fit: rgb(1 2 3); }")).toEqual([]);
  expect(faultsIn("/* --fit: #ffffff; */")).toEqual([]);
});
