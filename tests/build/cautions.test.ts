/** Every reagent and every toxic or burning gas has a page of caution, and no page covers a thing that does not exist. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { CATIONS } from "../../src/engine/constants/ions.ts";
import { reagents } from "../../src/engine/constants/reagents.ts";
import { GASES } from "../../src/engine/practical.ts";
import { ROOT } from "./broken.ts";

const FOLDER = join(ROOT, "src", "content", "cautions");
const covered = readdirSync(FOLDER).flatMap((name): string[] => {
  const [, frontmatter] = readFileSync(join(FOLDER, name), "utf8").split("---\n");
  return parse(frontmatter).covers ?? [];
});

/** Nobody is hurt by water or by a strip of litmus; universal indicator is used as paper. */
const HARMLESS = ["H2O(l)", "litmus paper", "universal indicator"];
/** Copper salts come as samples, water vapour has the caution on heated solids. */
const BESIDE = ["CuSO4(aq)", "CuCl2(aq)", "foil in hot alkali"];
const VERBS = ["warm", "boil", "heat solid", "lead through", "flame"];

test.each(reagents.map(({ id }) => id).filter((id) => !HARMLESS.includes(id)))("%s has a page", (id) => {
  expect(covered).toContain(id);
});

test.each(GASES.filter((gas) => gas !== "H2O"))("%s has a page", (gas) => {
  expect(covered).toContain(gas);
});

test("every thing covered exists, and is covered once", () => {
  const known: readonly string[] = [...reagents.map(({ id }) => id), ...GASES, ...CATIONS, ...VERBS, ...BESIDE];
  expect(covered.filter((one) => !known.includes(one))).toEqual([]);
  expect(new Set(covered).size).toBe(covered.length);
});
