/** Every reagent and every toxic or burning gas has a page of caution, and no page covers a thing that does not exist. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { GAS_SAFETY } from "../../src/engine/constants/gas-safety.ts";
import { ANIONS, CATIONS } from "../../src/engine/constants/ions.ts";
import { firstAids, reagents } from "../../src/engine/constants/reagents.ts";
import { COLLECTED } from "../../src/engine/planning/emptied.ts";
import { HARMFUL_GASES } from "../../src/engine/practical/gases.ts";
import { ROOT } from "./broken.ts";

const FOLDER = join(ROOT, "src", "content", "cautions");
const covered = readdirSync(FOLDER).flatMap((name): string[] => {
  const [, frontmatter] = readFileSync(join(FOLDER, name), "utf8").split("---\n");
  return parse(frontmatter).covers ?? [];
});

/** Nobody is hurt by water or by a strip of litmus; universal indicator is used as paper. */
const HARMLESS = ["H2O(l)", "litmus paper", "universal indicator"];
/** Copper salts come as samples, water vapour has the caution on heated solids. */
const BESIDE = ["CuSO4(aq)", "CuCl2(aq)", "foil in hot alkali", "rod with hydrochloric acid", "rod with ammonia"];
const VERBS = ["warm", "boil", "heat solid", "lead through", "flame", "filter", "wash"];
/** What is done in nearly every test has a page, but no place of its own beside a part. */
const EVERYWHERE = { take: "goggles", add: "goggles", shake: "goggles", "test gas": "testing-gases" };

test.each(reagents.map(({ id }) => id).filter((id) => !HARMLESS.includes(id)))("%s has a page", (id) => {
  expect(covered).toContain(id);
});

const GAS_NAMES = Object.keys(GAS_SAFETY);

test.each(GAS_NAMES.filter((gas) => gas !== "H2O"))("%s has a page", (gas) => {
  expect(covered).toContain(gas);
});

test("what harms lungs and eyes is told of though no test of a practical is for it", () => {
  const gravest = Object.entries(GAS_SAFETY).filter(([, { rank }]) => rank === 0);
  expect([...HARMFUL_GASES].sort()).toEqual(gravest.map(([gas]) => gas).sort());
});

test.each(VERBS)("%s has a page", (verb) => {
  expect(covered).toContain(verb);
});

test.each(Object.entries(EVERYWHERE))("%s is told of on the page %s", (_, page) => {
  expect(readdirSync(FOLDER)).toContain(`${page}.mdx`);
});

test("every thing covered exists, and is covered once", () => {
  const known: readonly string[] = [
    ...reagents.map(({ id }) => id),
    ...GAS_NAMES,
    ...CATIONS,
    ...ANIONS,
    ...VERBS,
    ...BESIDE,
  ];
  expect(covered.filter((one) => !known.includes(one))).toEqual([]);
  expect(new Set(covered).size).toBe(covered.length);
});

/** Twenty minutes is the stricter figure for eyes and for burns. From memory of school safety sheets; local rules decide. */
const EYES =
  "Eyes: gently running water at once, lids held open, for at least twenty minutes, while your teacher gets medical help.";
const BURNS = "Burns: cool under running water at once, for at least twenty minutes; somebody tells the teacher.";
const pages = readdirSync(FOLDER).map((name): [string, string] => [name, readFileSync(join(FOLDER, name), "utf8")]);

test.each(pages.filter(([, page]) => page.includes("## If something goes wrong")))(
  "%s says one thing on eyes and on burns",
  (_, page) => {
    const said = page.match(/(Eyes|Burns): .*/g) ?? [];
    expect(said.length).toBeGreaterThan(0);
    expect(said.filter((one) => one !== EYES && one !== BURNS)).toEqual([]);
  },
);

test.each(Object.entries(firstAids))("first aid %s says the same on eyes", (_, aid) => {
  expect(aid).toContain(EYES);
});

test("a tube that holds several kinds goes by the order of the waste page", () => {
  const [, list] = pages.find(([name]) => name === "waste.mdx")?.[1].split("the first in this list decides") ?? [];
  const [bottles] = list.split("What needs no bottle");
  const order = [...bottles.matchAll(/^- \*\*(.+?)\*\*/gm)].map(([, kind]) =>
    kind.toLowerCase().replace(/metals$/, "metal"),
  );
  expect(order).toEqual(COLLECTED.map((kind) => kind.toLowerCase()));
});
