/** Beside every part of the course that heats something stands the caution for just that: a liquid and a dry solid are heated differently. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { practicalPaths, readPage, readPracticalFile } from "../../src/build/practical-files.ts";
import { walkthrough } from "../../src/build/walkthrough.ts";
import { cautionsFor } from "../../src/components/carry-out/part-cautions.ts";
import { benchOf, wordSteps } from "../../src/components/carry-out/step-words.ts";
import { ROOT } from "./broken.ts";

const FOLDER = join(ROOT, "src", "content", "cautions");
const all = readdirSync(FOLDER).map((name) => {
  const [, frontmatter] = readFileSync(join(FOLDER, name), "utf8").split("---\n");
  const { covers = [], kind, summary } = parse(frontmatter);
  return { name, summary, data: { covers, kind } };
});

const heated = practicalPaths(ROOT).flatMap((path) => {
  const read = readPracticalFile(path, readPage(ROOT, path));
  if ("faults" in read) throw new Error(`${path} has faults`);
  const { practical } = read;
  return practical.parts.flatMap((part) => {
    const steps = part.tests.flatMap((one) => one.steps);
    const liquid = steps.some((step) => step.do === "warm" || step.do === "boil");
    const solid = steps.some((step) => step.do === "heat solid");
    return liquid || solid ? [{ at: `${path} ${part.label}`, practical, part, steps, liquid, solid }] : [];
  });
});

/** Common practice, no source: water that runs back from the mouth cracks the hot bottom (hydrates). */
const LOWERED = /mouth( of the tube)? a little lower than the bottom/;

test("the course heats liquids and solids", () => {
  expect(heated.some(({ liquid }) => liquid)).toBe(true);
  expect(heated.some(({ solid }) => solid)).toBe(true);
});

test.each(heated)("$at", ({ practical, part, liquid, solid }) => {
  const beside = cautionsFor(part, [], practical.paper.cations, all);
  const names = beside.map(({ name }) => name);
  expect(names.includes("heating.mdx")).toBe(liquid);
  expect(names.includes("heating-a-solid.mdx")).toBe(solid);
  for (const { name, summary } of beside) if (name === "heating-a-solid.mdx") expect(summary).toMatch(LOWERED);
});

test.each(heated.filter(({ solid }) => solid))("$at says it in the step and in the cautions of the bench", (one) => {
  const { plan } = walkthrough(one.practical);
  expect(plan.cautions.join(" ")).toMatch(LOWERED);
  const words = wordSteps(one.steps, benchOf(one.part, one.practical.samples, plan), false);
  expect(words.filter((says) => LOWERED.test(says)).length).toBe(
    one.steps.filter((step) => step.do === "heat solid").length,
  );
  // A melt runs to a lowered mouth (common practice, no source).
  expect(
    words.filter((says) => LOWERED.test(says)).every((says) => /if it melts, hold the tube level/.test(says)),
  ).toBe(true);
});
