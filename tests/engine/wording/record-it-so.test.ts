/** What the pages of the ion tests tell a reader to write, under "Record it so", is read as it stands. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readWords } from "../../../src/engine/wording/read-words.ts";

const PAGES = "src/content/ion-tests";

/** The sentences in the first quotation marks of the section, one for each addition, with the words of the addition itself. */
function recordedSo(page: string): string[] {
  const section = readFileSync(join(PAGES, page), "utf8").split("## Record it so")[1] ?? "";
  const quoted = /"([^"]+)"/.exec(section.split(/^## /m)[0])?.[1] ?? "";
  return quoted
    .replace(/\s+/g, " ")
    .split(/(?<=\.) /)
    .filter((sentence) => sentence !== "");
}

const lines = readdirSync(PAGES).flatMap((page) => recordedSo(page).map((line) => [page, line] as const));

test("there is one for every page", () => {
  expect(new Set(lines.map(([page]) => page)).size).toBe(readdirSync(PAGES).length);
  expect(lines.length).toBeGreaterThan(30);
});

test.each(lines)("%s: %s", (_, line) => {
  const { seen = {}, questions } = readWords(line);
  expect(questions).toEqual([]);
  expect(Object.keys(seen)).not.toEqual([]);
  // No gas, no fate, no precipitate and no colour of the liquid but in words.
  expect(seen.gas !== undefined && !/litmus|limewater|splint|no gas/.test(line)).toBe(false);
  expect(seen.fate !== undefined && !/dissolves/.test(line)).toBe(false);
  expect(seen.precipitate !== undefined && !/precipitate/.test(line)).toBe(false);
  expect(seen.solution !== undefined && !/solution|colour goes/i.test(line)).toBe(false);
});
