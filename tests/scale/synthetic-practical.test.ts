/** The synthetic practicals are practicals: they read, they pass the check of the course, and a seed always gives the same one. */
import { expect, test, vi } from "vitest";
import { checkPractical } from "../../src/build/check-practical.ts";
import { readPracticalFile } from "../../src/build/practical-files.ts";
import { createGenerator } from "./synthetic-practical.ts";

// Each is drawn, which predicts it, and then checked, which predicts it again; the limit only ends what hangs.
vi.setConfig({ testTimeout: 180_000 });

const generate = createGenerator();

test.each([0, 1, 2, 7])("seed %i passes the check", (seed) => {
  const { name, text } = generate(seed);
  const read = readPracticalFile(`${name}.mdx`, text);
  if ("faults" in read) throw new Error(JSON.stringify(read.faults));
  expect(checkPractical(read)).toEqual([]);
  const { samples, record } = read.practical;
  expect(samples.length).toBe(2);
  for (const { label } of samples) expect(Object.keys(record[label]).length).toBeGreaterThanOrEqual(3);
});

test("a seed gives the same practical again, another seed another one", () => {
  expect(createGenerator()(3)).toEqual(generate(3));
  expect(generate(4).text).not.toBe(generate(3).text);
});
