import { describe, expect, test } from "vitest";
import { wrongArrows } from "./arrows.ts";
import { importsOf } from "./imports-of.ts";
import { impurities } from "./impurities.ts";
import { sourceFiles } from "./source-files.ts";

const CODE = [".ts", ".tsx", ".astro", ".mdx"];

describe("the house as it stands", () => {
  test("has files to look at", () => {
    expect(sourceFiles("src/engine", [".ts"]).size).toBeGreaterThan(10);
  });

  test("imports point one way", () => {
    expect(wrongArrows(sourceFiles("src", CODE))).toEqual([]);
  });

  test("the engine uses no clock, no chance, no browser and no host", () => {
    expect(impurities(sourceFiles("src/engine", [".ts"]))).toEqual([]);
  });
});

/** Each line breaks one rule, and must be reported at line 2 of its file. */
const WRONG: readonly (readonly [path: string, line: string, sentence: RegExp])[] = [
  [
    "src/engine/formula/a.ts",
    "import { p } from '../practical/step.ts';",
    /"formula" may use constants, not "practical"/,
  ],
  [
    "src/engine/constants/a.ts",
    "export * from '../practical/step.ts';",
    /"constants" may use formula, not "practical"/,
  ],
  ["src/engine/practical/a.ts", "import { s } from '../equilibrium/solve.ts';", /"practical" may use .* not "equil/],
  ["src/engine/practical.ts", "import { s } from './bench/vessel.ts';", /"practical" may use .* not "bench"/],
  ["src/engine/equilibrium/a.ts", "const b = await import('../bench/vessel.ts');", /"equilibrium" may use .* "bench"/],
  ["src/engine/bench/a.ts", "import { words } from '../wording/words.ts';", /"bench" may use .* not "wording"/],
  ["src/engine/bench/a.ts", "import type { Plan } from '../planning/plan.ts';", /"bench" may use .* not "planning"/],
  ["src/engine/wording/a.ts", "import { d } from '../deduction/deduce.ts';", /"wording" may use .* not "deduction"/],
  ["src/engine/bench/a.ts", "import { all } from '../index.ts';", /"bench" may use .* not "index"/],
  ["src/engine/shelf/a.ts", "import { K } from '../constants/ions.ts';", /"shelf" is not in the order of rooms/],
  ["src/engine/bench/a.ts", "import B from '../../components/Button.tsx';", /knows nothing of the site/],
  ["src/engine/index.ts", "import { check } from '../build/check.ts';", /knows nothing of the site/],
  ["src/engine/practical/a.ts", "import { z } from 'zod';", /pure and takes only zod\/mini/],
  ["src/engine/bench/a.ts", "import { z } from 'astro/zod';", /pure and takes only zod\/mini/],
  ["src/engine/bench/a.ts", "import { readFileSync } from 'node:fs';", /pure and takes only zod\/mini/],
  ["src/engine/bench/a.ts", "export { h } from 'preact';", /pure and takes only zod\/mini/],
  ["src/components/record/A.tsx", "import { solve } from '../../engine/equilibrium/solve.ts';", /compute no chemistry/],
  ["src/components/record/A.tsx", "import { type T, step } from '../../engine/bench/step.ts';", /compute no chemistry/],
  ["src/components/record/A.astro", "import { predict } from '../../engine/index.ts';", /compute no chemistry/],
  ["src/components/record/A.tsx", "import Home from '../../pages/index.astro';", /nothing imports from them/],
  ["src/content/method/a.mdx", "import Home from '../../pages/index.astro';", /nothing imports from them/],
  ["src/build/a.ts", "export type { P } from '../pages/props.ts';", /nothing imports from them/],
  ["src/components/a.worker.ts", "import { c } from '../build/check.ts';", /takes only types from the build/],
  ["src/components/record/A.tsx", "const c = await import('../../build/check.ts');", /takes only types from the build/],
  ["src/components/a.ts", "import { TEST } from '../words/de/record.ts';", /Words come by their room/],
  ["src/engine/wording/a.ts", "import { TEST } from '../../words/en-GB/record.ts';", /Words come by their room/],
  ["src/words/de/record.ts", "import { TEST } from '../en-GB/record.ts';", /takes no words of another/],
  ["src/words/de/record.ts", "import { GASES } from '../../engine/practical/gases.ts';", /Words stand by themselves/],
  ["src/words/de/record.ts", "import type { P } from '../../components/p.ts';", /Words stand by themselves/],
  ["src/authoring/a.ts", "import { c } from '../build/check.ts';", /stands below the build and the pages/],
  ["src/components/a.ts", "const u = new URL('../engine/bench/step.ts', import.meta.url);", /compute no chemistry/],
];

const RIGHT: readonly (readonly [path: string, line: string])[] = [
  ["src/engine/formula/a.ts", "import { atomicWeight } from '../constants/atomic-weights.ts';"],
  ["src/components/prepare/A.tsx", "import { TEST_TUBES } from '../../engine/constants/glassware.ts';"],
  ["src/engine/constants/a.ts", "import { parse } from '../formula/parse.ts';"],
  ["src/engine/practical/a.ts", "import * as z from 'zod/mini';"],
  ["src/engine/equilibrium/a.ts", "import type { Step } from '../practical.ts';"],
  ["src/engine/planning/a.ts", "import { step } from '../bench/step.ts';"],
  ["src/engine/index.ts", "export { deduce } from './deduction/deduce.ts';"],
  ["src/components/record/A.tsx", "import type { Vessel } from '../../engine/bench/vessel.ts';"],
  ["src/components/record/A.tsx", "import { type Vessel } from '../../engine/bench/vessel.ts';"],
  ["src/components/record/A.tsx", "import { deduce } from '../../engine/deduction/deduce.ts';"],
  ["src/components/record/bench.worker.ts", "import { predict } from '../../engine/index.ts';"],
  ["src/components/record/A.tsx", "import type { Row } from '../../build/check.ts';"],
  ["src/components/record/A.astro", "import { row } from '../../build/check.ts';"],
  ["src/build/check.ts", "import { predict } from '../engine/index.ts';"],
  ["src/engine/wording/a.ts", "import { none } from '#words/observation.ts';"],
  ["src/components/record/A.tsx", "import { TEST } from '#words/record.ts';"],
  ["src/build/a.ts", "import { TAGS } from '../words/tags.ts';"],
  ["src/words/de/a.ts", "import type { Gas } from '../../engine/practical/gases.ts';"],
  ["src/words/de/a.ts", "import { AND } from './language.ts';"],
  ["src/pages/index.astro", "import Page from '../layouts/Page.astro';"],
];

/** The line stands where code stands in a file of that kind. */
function fileWith(path: string, line: string): string {
  return path.endsWith(".astro") ? `---\n${line}\n---\n<p>words</p>\n` : `\n${line}\n`;
}

describe("the check itself", () => {
  test.each(WRONG)("reports in %s: %s", (path, line, sentence) => {
    const reports = wrongArrows(new Map([[path, fileWith(path, line)]]));
    expect(reports).toHaveLength(1);
    expect(reports[0]).toMatch(sentence);
    expect(reports[0].startsWith(`${path}:2: imports `)).toBe(true);
  });

  test.each(RIGHT)("is content with %s: %s", (path, line) => {
    expect(wrongArrows(new Map([[path, fileWith(path, line)]]))).toEqual([]);
  });

  test("reads the scripts of an Astro file with their true lines", () => {
    const text = "---\nimport A from './A.astro';\n---\n<A />\n<script>\n  import { b } from './b.ts';\n</script>\n";
    expect(importsOf("src/components/C.astro", text)).toEqual([
      { line: 2, specifier: "./A.astro", target: "src/components/A.astro", typeOnly: false },
      { line: 6, specifier: "./b.ts", target: "src/components/b.ts", typeOnly: false },
    ]);
  });

  test.each([
    ["const t = Date.now();", "Date"],
    ["const x = Math.random();", "Math.random"],
    ['performance.mark("a");', "performance"],
    ['document.title = "";', "document"],
    ['if (typeof window === "undefined") f();', "window"],
    ["const p = process.env;", "process"],
    ['await fetch("x");', "fetch"],
    ["console.log(1);", "console"],
  ])("reports %s", (line, name) => {
    const reports = impurities(new Map([["src/engine/bench/a.ts", `\n${line}\n`]]));
    expect(reports).toHaveLength(1);
    expect(reports[0].startsWith(`src/engine/bench/a.ts:2: uses ${name}. The engine is pure`)).toBe(true);
  });

  test("is content with names of the file’s own and with members", () => {
    const text = "interface S { process: string }\nfunction f(window: number, s: S) { return s.process + window; }\n";
    expect(impurities(new Map([["src/engine/bench/a.ts", text]]))).toEqual([]);
  });
});
