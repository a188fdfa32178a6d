import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readFrontmatter } from "../../../src/authoring/frontmatter.ts";
import { checkPractical } from "../../../src/build/check-practical.ts";
import { practicalPaths, readPage, readPracticalFile } from "../../../src/build/practical-files.ts";
import { readAsFar } from "../../../src/components/paper/as-far.ts";
import { fitting, stored, written } from "../../../src/components/paper/draft.ts";
import { draftOf, holdsNoPaper } from "../../../src/components/paper/draft-of.ts";
import { writeFile } from "../../../src/components/paper/write-file.ts";
import { readPaper } from "../../../src/engine/practical/faults.ts";

const ROOT = join(import.meta.dirname, "../../..");
const paths = practicalPaths(ROOT);
const dataOf = (path: string) => readFrontmatter(path, readPage(ROOT, path)).data as Record<string, unknown>;
const withoutAnswer = (data: Record<string, unknown>) => ({
  ...data,
  samples: (data.samples as Record<string, unknown>[]).map(({ salt: _, ...given }) => given),
});

describe.each(paths)("%s as a paper", (path) => {
  const { draft, leftOut } = draftOf(dataOf(path));

  test("fits the form whole, and reads as the practical without its answer", () => {
    expect(leftOut).toEqual([]);
    const read = readPaper(written(draft));
    const { title, minutes, samples, paper, parts, record } = withoutAnswer(dataOf(path)) as Record<string, unknown>;
    const bare = (parts as Record<string, unknown>[]).map(({ note: _, ...part }) => part);
    expect(read).toEqual(readPaper({ title, minutes, samples, paper, parts: bare, record }));
    expect(read).toHaveProperty("paper");
  });

  test("comes back the same from what was written of it", () => {
    expect(draftOf(written(draft))).toEqual({ draft, leftOut: [] });
  });

  test("comes back the same from its file, and the file names the places only its author can fill", () => {
    const file = writeFile(draft, {});
    expect(draftOf(readFrontmatter("own.mdx", file).data)).toEqual({ draft, leftOut: [] });
    const read = readPracticalFile("own.mdx", file);
    expect("faults" in read && read.faults.map(({ what }) => what)).toEqual(
      draft.samples.map((_, index) => `samples > ${index} > salt`),
    );
  });
});

test("with the answer filled in, a written file passes the check that the build makes", () => {
  const path = "src/content/practicals/shed-two-tins.mdx";
  const data = dataOf(path);
  const salts = Object.fromEntries(
    (data.samples as { label: string; salt: string }[]).map(({ label, salt }) => [label, salt]),
  );
  const read = readPracticalFile("own.mdx", writeFile(draftOf(data).draft, salts));
  if ("faults" in read) throw new Error(JSON.stringify(read.faults));
  expect(checkPractical(read)).toEqual([]);
}, 120_000);

test("titles and words with signs of YAML come back from the file", () => {
  const { draft } = draftOf({
    minutes: 45,
    title: 'no: "yes" # {a} - &b',
    samples: [{ label: "N", given: "solid" }],
    parts: [],
  });
  expect(draftOf(readFrontmatter("own.mdx", writeFile(draft, {})).data).draft).toEqual(draft);
});

const TWO_CALLED_A = {
  paper: { cations: "school", anions: "school" },
  samples: [{ label: "P", given: "solution", concentration: "0.1 mol/dm3" }],
  parts: ["white", "pale blue"].map((precipitate) => ({
    label: "a",
    title: "Alkali",
    tests: [{ steps: [{ take: "1 cm3" }], seen: { P: { precipitate: { colour: precipitate, amount: "plain" } } } }],
  })),
};

test("while two parts share a letter, the record of each is kept", () => {
  const { draft, leftOut } = draftOf(TWO_CALLED_A);
  expect(leftOut).toEqual([]);
  expect(draft.parts.map(({ tests }) => tests[0].seen.P.precipitate)).toEqual([
    { colour: "white", amount: "plain" },
    { colour: "pale blue", amount: "plain" },
  ]);
  expect(draftOf(JSON.parse(JSON.stringify(stored(draft))))).toEqual({ draft, leftOut: [] });
});

test.each(paths)("%s comes back the same from what the browser keeps", (path) => {
  const { draft } = draftOf(dataOf(path));
  expect(draftOf(JSON.parse(JSON.stringify(stored(draft))))).toEqual({ draft, leftOut: [] });
});

test("words too long for a test are cut and told, never dropped", () => {
  const part = { label: "a", title: "Long", tests: [{ says: "add ".repeat(600), steps: [{ take: "1 cm3" }] }] };
  const { draft, leftOut } = draftOf({
    ...TWO_CALLED_A,
    paper: { cations: "school", anions: "school" },
    parts: [part],
  });
  const { says } = draft.parts[0].tests[0];
  expect(says).toBe(fitting("add ".repeat(600)));
  expect(says).toMatch(/^add add .*…$/);
  expect(leftOut).toEqual(["part 1, test 1, says: found 2400 letters, at most 2000 fit; the rest was cut off."]);
  expect(readPaper(written(draft))).toHaveProperty("paper");
  expect(draftOf(stored(draft))).toEqual({ draft, leftOut: [] });
});

test("a letter with signs of YAML comes back from the file as that letter", () => {
  const { draft } = draftOf({
    samples: [{ label: 'P: {x} # "', given: "solid" }],
    parts: [
      {
        label: "a: [",
        title: "Heat",
        tests: [{ steps: [{ take: "0.2 g" }], seen: { 'P: {x} # "': { none: true } } }],
      },
    ],
  });
  const { draft: back } = draftOf(readFrontmatter("own.mdx", writeFile(draft, {})).data);
  expect(back.samples[0].label).toBe('P: {x} # "');
  expect(back.parts).toEqual(draft.parts);
});

describe("any input", () => {
  const written_ = () => fc.jsonValue({ maxDepth: 4 });
  test("becomes a draft whose written form is read or refused, never thrown", () => {
    const around = fc.record(
      { title: written_(), samples: written_(), paper: written_(), parts: written_(), record: written_() },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.oneof(written_(), around), (input) => {
        const { draft } = draftOf(input);
        const read = readAsFar(written(draft), () => []);
        expect(read.paper !== undefined || read.faults.length > 0).toBe(true);
      }),
      { seed: 9, numRuns: 500 },
    );
  });

  test("keys that reach into objects are passed over", () => {
    const input = JSON.parse(
      '{"parts":[{"tests":[{"steps":[{"__proto__":"x","add":"NaOH(aq)"}]}]}],"record":{"__proto__":{"a":{}}}}',
    );
    const { draft } = draftOf(input);
    expect(draft.parts[0].tests[0].steps).toEqual([{ add: "NaOH(aq)" }]);
    expect(({} as Record<string, unknown>).a).toBeUndefined();
  });
});

describe("an unfinished paper is read as far as it goes", () => {
  const base = withoutAnswer(dataOf(paths[0])) as { samples: unknown[]; parts: { tests: { steps: unknown[] }[] }[] };
  const paper = () => structuredClone(written(draftOf(base).draft)) as typeof base & { record?: unknown };

  test("a test without its amount, and what comes after it in the tube, is left out", () => {
    const one = paper();
    const last = one.parts[0].tests.length - 1;
    one.parts[0].tests[last].steps = [{ add: "NaOH(aq)" }];
    delete one.record;
    const read = readAsFar(one, () => []);
    expect(read.faults.map(({ path }) => path.slice(0, 6))).toEqual([["parts", 0, "tests", last, "steps", 0]]);
    expect(read.lines.some(([part, test]) => part === 0 && test === last)).toBe(false);
    expect(read.lines.filter(([part]) => part === 1)).toHaveLength(one.parts[1].tests.length);
  });

  test("a look at a gas that is not chosen yet is left out alone, for the rest of its line is done all the same", () => {
    const one = paper();
    one.parts[0].tests = [{ steps: [{ take: "1 cm3" }, { add: "HCl(aq)", volume: "1 cm3" }, { testGas: "" }] }];
    delete one.record;
    const read = readAsFar(one, () => []);
    expect(read.faults.map(({ path }) => path.slice(0, 6))).toEqual([["parts", 0, "tests", 0, "steps", 2]]);
    expect(read.paper?.parts[0].tests[0].steps.map((each) => each.do)).toEqual(["take", "add"]);
  });

  test("without any sample nothing can be worked out", () => {
    const one = paper();
    one.samples = [{ label: "p", given: "solution" }];
    expect(readAsFar(one, () => [])).not.toHaveProperty("paper");
  });
});

test.each<[unknown, boolean]>([
  [{}, true],
  [[], true],
  [null, true],
  [{ samples: [], parts: [] }, true],
  [{ title: "Two jars" }, false],
  [{ samples: [{ label: "P" }] }, false],
])("%j holds no paper: %s", (input, none) => {
  expect(holdsNoPaper(input)).toBe(none);
});
