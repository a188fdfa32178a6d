import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { noFirefox, startFirefox } from "./firefox.ts";
import type { Reader } from "./reader.ts";
import { noWebKit, startWebKit } from "./webkit.ts";

/*
 * The job's few decisive moves in the two other families of browsers. Everything else is tested in Chromium, which needs no package of
 * the system; where these two are absent the tests are skipped.
 */
const ENGINES = [
  { engine: "Firefox", missing: noFirefox, start: startFirefox },
  { engine: "WebKit", missing: noWebKit, start: startWebKit },
];

const CELL = 'select[aria-label="c(ii) for R"]';
const RECORD = 'document.querySelector("#record").closest("section")';
const CONCLUDE = 'document.querySelector("#conclude").closest("section")';

describe.each(ENGINES)("in $engine", { timeout: 120_000 }, ({ engine, missing, start }) => {
  let reader: Reader;
  const at = (path: string) => new URL(path, inject("builtSite").address).href;
  const shown = (expression: string) => expect.poll(() => reader.ask(expression), { timeout: 60_000 });

  beforeAll(async () => {
    if (missing === undefined) reader = await start();
  }, 120_000);
  afterAll(async () => reader?.close());

  test.skipIf(missing !== undefined)(missing ?? "a changed cell changes the conclusion", async () => {
    await reader.open(at("practicals/lamp-room-shelf/"));
    await shown(`${CONCLUDE}.innerText`).toContain("R holds zinc sulfate");
    await reader.ask(`${RECORD}.scrollIntoView()`);
    await shown(`[...${RECORD}.querySelectorAll("astro-island")].every((island) => !island.hasAttribute("ssr"))`).toBe(
      true,
    );
    await shown(`document.querySelector(${JSON.stringify(CELL)}).options.length > 3`).toBe(true);
    await reader.choose(CELL, "no visible change");
    // Without the barium precipitate R is no sulfate; S and T share the chloride and the shelf holds two anions: nitrate is left.
    await shown(`${CONCLUDE}.innerText`).toContain("R holds zinc nitrate");
    expect(await reader.ask("location.search")).toBe("?R.c.ii=no+visible+change");
  });

  test.skipIf(missing !== undefined)("the search finds a test by its formula", async () => {
    await reader.open(at("search/"));
    await shown('document.querySelector("input[type=search]") !== null').toBe(true);
    await reader.type("input[type=search]", "AgNO3\n");
    await shown('document.querySelector("#results")?.innerText ?? ""').toContain("Silver nitrate test");
  });

  test.skipIf(missing !== undefined)("a walkthrough is laid out for paper", async ({ skip }) => {
    await reader.open(at("practicals/lamp-room-shelf/"));
    const paper = await reader.print();
    if (paper === undefined) skip(`the driver of ${engine} has no command to print`);
    else expect(Buffer.from(paper.subarray(0, 5)).toString()).toBe("%PDF-");
  });

  test.skipIf(missing !== undefined)("nothing went wrong on the way, and nobody else was asked", ({ skip }) => {
    const faults = reader.faults();
    if (faults === undefined) skip(`the driver of ${engine} tells nothing of what a page logs or asks for`);
    else expect(faults).toEqual([]);
  });
});
