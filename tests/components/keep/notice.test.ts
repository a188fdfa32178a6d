import { expect, test } from "vitest";
import { noticeLine, withNotice } from "../../../src/components/keep/notice.ts";

const BASE = "https://school.example/chemistry/";
const HTML = '<header></header><main id="content" tabindex="-1"><h1>Method</h1></main>';
const page = (type: string) =>
  new Response(HTML, { headers: { "Content-Type": type, "Content-Length": "70", "Referrer-Policy": "no-referrer" } });

test("the line stands before the page's content, and the page keeps its headers but for its length", async () => {
  const told = await withNotice(page("text/html; charset=utf-8"), true, BASE);
  expect(await told.text()).toBe(HTML.replace("<main", `${noticeLine(BASE)}<main`));
  expect(told.headers.get("Content-Length")).toBeNull();
  expect(told.headers.get("Referrer-Policy")).toBe("no-referrer");
  expect(noticeLine(BASE)).toContain('href="https://school.example/chemistry/keep/"');
});

test.each([
  ["not wanted", "text/html", false],
  ["no page", "application/json", true],
])("nothing is changed where it is %s", async (_, type, wanted) => {
  const found = page(type);
  expect(await withNotice(found, wanted, BASE)).toBe(found);
});
