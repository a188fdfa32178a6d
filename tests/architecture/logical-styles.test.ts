/** Styles speak of the start and the end of a line, not of left and right, so that a language may run the other way. */
import { expect, test } from "vitest";
import { sourceFiles } from "./source-files.ts";

const PHYSICAL =
  /^\s*(?:left|right|(?:margin|padding|border|scroll-margin|scroll-padding)-(?:left|right)(?:-\w+)?)\s*:|(?:float|clear|text-align)\s*:\s*(?:left|right)\b/;
/** Four values of which the second and the fourth differ. */
const FOUR = /^\s*(?:margin|padding|inset|border-width)\s*:\s*(\S+)\s+(\S+)\s+(\S+)\s+(\S+);/;

/** Drawn with borders and turned, in any language alike: the arrow of an equation, the tick. */
const DRAWN = [".equation .arrow", ".tick::before"];

/** The rule a line stands in: what was written before the last opening brace. */
function ruleOf(lines: readonly string[], at: number): string {
  const head: string[] = [];
  let line = at;
  while (line > 0 && !lines[line].includes("{")) line--;
  for (; line >= 0 && !/[};]\s*$/.test(lines[line]); line--) head.unshift(lines[line]);
  return head.join(" ");
}

function physicalStyles(path: string, css: string): string[] {
  const lines = css.split("\n");
  return lines.flatMap((line, at) => {
    const four = FOUR.exec(line);
    if (!PHYSICAL.test(line) && !(four && four[2] !== four[4])) return [];
    if (DRAWN.some((drawn) => ruleOf(lines, at).includes(drawn))) return [];
    return [`${path}:${at + 1}: ${line.trim()} Say inline-start or inline-end.`];
  });
}

test("no style sheet says left or right", () => {
  const sheets = sourceFiles("src/styles", [".css"]);
  expect(sheets.size).toBeGreaterThan(10);
  expect([...sheets].flatMap(([path, css]) => physicalStyles(path, css))).toEqual([]);
});

test.each([
  "margin-left: 1em;",
  "text-align: right;",
  "float: left;",
  "left: 0;",
  "padding: 1px 2px 1px 0;",
  "border-right-width: 1px;",
])("the check finds %s", (style) => {
  expect(physicalStyles("a.css", `.a {\n  ${style}\n}`)).toHaveLength(1);
});

test.each([
  "margin-inline-start: 1em;",
  "text-align: end;",
  "padding: 1px 2px;",
  "padding: 1px 2px 3px 2px;",
  "inset-inline-end: 0;",
])("the check is content with %s", (style) => {
  expect(physicalStyles("a.css", `.a {\n  ${style}\n}`)).toEqual([]);
});
