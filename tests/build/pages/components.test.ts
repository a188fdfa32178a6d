import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, test } from "vitest";
import { COMPONENTS } from "../../../src/build/pages/components.ts";

test("the check knows just the components that pages are given", () => {
  const prose = readFileSync(resolve("src/components/Prose.astro"), "utf8");
  const given = /components=\{\{([\s\S]*?)\}\}/.exec(prose)?.[1] ?? "";
  const names = [...given.matchAll(/^\s*([A-Z]\w*),$/gm)].map(([, name]) => name);
  expect(names.length).toBeGreaterThan(5);
  expect(Object.keys(COMPONENTS).sort()).toEqual(names.sort());
});
