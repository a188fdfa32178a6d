/** Every reagent and every toxic or burning gas has a page of caution, and no page covers a thing that does not exist. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { SAMPLE_CAUTIONS } from "../../src/engine/constants/bench-cautions.ts";
import { EMPTIED_APART } from "../../src/engine/constants/emptied-apart.ts";
import { GAS_SAFETY } from "../../src/engine/constants/gas-safety.ts";
import { ANIONS, CATIONS } from "../../src/engine/constants/ions.ts";
import { firstAids, reagents, wastes } from "../../src/engine/constants/reagents.ts";
import { salts } from "../../src/engine/constants/salts.ts";
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

const wastePage = pages.find(([name]) => name === "waste.mdx")?.[1] ?? "";
/** The bottles of the page in its order: [the kind, what goes into it]. */
const bottles = [...wastePage.split("What needs no bottle")[0].matchAll(/^- \*\*(.+?)\*\*: (.*)$/gm)].map(
  ([, kind, what]) => [kind.toLowerCase().replace(/metals$/, "metal"), what.toLowerCase()],
);

test("a tube that holds several kinds goes by the order of the waste page, in its summary too", () => {
  expect(bottles.map(([kind]) => kind)).toEqual(COLLECTED.map((kind) => kind.toLowerCase()));
  const summary = wastePage.match(/^summary: (.*)$/m)?.[1] ?? "";
  const named = [...summary.matchAll(/[A-Z]{4,}( METALS)?/g)].map(([label]) => label);
  expect(named).toEqual(COLLECTED.map((kind) => wastes[kind].match(/marked ([A-Z ]+[A-Z])/)?.[1]));
});

/** As the waste page names what is collected, by ion and by reagent: names of the elements by IUPAC. */
const CALLED: Record<string, RegExp> = {
  "Pb^2+": /lead/,
  "CrO4^2-": /chromate and dichromate/,
  "Ag+": /silver/,
  "Ba^2+": /barium/,
  "Cr^3+": /other chromium/,
  "Co^2+": /cobalt,/,
  "Ni^2+": /nickel/,
  "Mn^2+": /manganese of a sample/,
  "K2Cr2O7 paper": /papers/,
  "CoCl2 paper": /cobalt paper/,
};

test("the waste page collects what the data collect, each in its bottle, and nothing else", () => {
  const bottleOf = (what: string) =>
    SAMPLE_CAUTIONS[what]?.waste ?? reagents.find(({ id }) => id === what)?.waste ?? "nowhere";
  for (const [what, called] of Object.entries(CALLED)) {
    const kind = bottles.find(([kind, text]) => called.test(`${kind}: ${text}`))?.[0];
    expect([what, kind]).toEqual([what, bottleOf(what).toLowerCase()]);
  }
  const collected = Object.entries(SAMPLE_CAUTIONS).filter(([, { waste }]) => COLLECTED.includes(waste));
  expect(collected.map(([ion]) => ion).filter((ion) => !(ion in CALLED))).toEqual([]);
  // A metal the page names in a bottle of several stands in the data.
  const metals = bottles.at(-1)?.[1].match(/chromium|manganese|iron|cobalt|nickel|copper|zinc|tin|strontium/g) ?? [];
  expect([...new Set(metals)].sort()).toEqual(["chromium", "cobalt", "manganese", "nickel"]);
});

test("what the store collects of a salt is what a sample of it is collected as", () => {
  for (const { formula, cations, anions, waste } of salts) {
    const kinds = [...cations, ...anions].flatMap((ion) => SAMPLE_CAUTIONS[ion]?.waste ?? []);
    const first = COLLECTED.find((kind) => kinds.includes(kind));
    expect([formula, COLLECTED.includes(waste) ? waste : undefined]).toEqual([formula, first]);
  }
});

test("what goes straight down the sink stands on the waste page", () => {
  const [, list] = wastePage.split("straight down the sink");
  const called = [
    /Chlorine water/,
    /Iodine/,
    /With ammonia it may hold a solid that explodes/,
    /Thiocyanate and hexacyanoferrates/,
    /manganate\(VII\)/,
    /sulfite or thiosulfate/,
    /nitrite/,
  ];
  expect(called).toHaveLength(EMPTIED_APART.length);
  for (const name of called) expect(list).toMatch(name);
});
