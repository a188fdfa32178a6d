/** The check of a whole project: the shipped one passes; all faults of all files come in one report, in the order of the files. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { ContentFaults } from "../../src/authoring/faults.ts";
import { checkAll } from "../../src/build/check-all.ts";
import { practicalPaths } from "../../src/build/practical-files.ts";
import { BROKEN, ROOT, sound } from "./broken.ts";

// Threads load the engine anew and share the processor with everything else that is tested; the limit only ends what hangs.
vi.setConfig({ testTimeout: 180_000 });

let root: string;
const FOLDER = "src/content/practicals";
const write = (name: string, text: string) => {
  const path = join(root, FOLDER, name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
};

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "practicals-"));
  write("a-sound.mdx", sound);
  write("notes.md", "not a practical");
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

async function report(): Promise<ContentFaults | number> {
  try {
    return await checkAll(root, false);
  } catch (error) {
    if (error instanceof ContentFaults) return error;
    throw error;
  }
}

test("the shipped practicals pass, and there are some", async () => {
  expect(practicalPaths(ROOT).length).toBeGreaterThanOrEqual(2);
  expect(await checkAll(ROOT, false)).toBe(
    practicalPaths(ROOT, "src/content").filter((path) => /\/practicals\//.test(path)).length,
  );
});

test("one sound practical passes; other files are left alone", async () => {
  expect(await report()).toBe(1);
});

test("broken files are reported in one run, beside sound ones", async () => {
  write("b-observation.mdx", BROKEN["an observation the engine contradicts"]);
  write("c-bracket.mdx", BROKEN["a bracket left open"]);
  write("deeper/d-unit.mdx", BROKEN["a bad unit"]);
  const found = await report();
  if (typeof found === "number") throw new Error("the broken files passed");
  expect([...new Set(found.faults.map(({ file }) => file))]).toEqual(
    ["b-observation.mdx", "c-bracket.mdx", "deeper/d-unit.mdx"].map((name) => `${FOLDER}/${name}`),
  );
  for (const { file, line, column } of found.faults) expect(found.message).toContain(`${file}:${line}:${column}  `);
  expect(found.message).toMatch(new RegExp(`^${found.faults.length} faults in the content\n\n`));
});

test("a file the engine cannot work out does not hide the faults of another", async () => {
  write("b-stopped.mdx", sound.replace("{ add: NaOH(aq), drops: 5 }", "{ add: CH3COOH(aq), drops: 5 }"));
  write("c-unit.mdx", BROKEN["a bad unit"]);
  const found = await report();
  if (typeof found === "number") throw new Error("the broken files passed");
  const files = found.faults.map(({ file }) => file);
  expect(files).toContain(`${FOLDER}/b-stopped.mdx`);
  expect(files).toContain(`${FOLDER}/c-unit.mdx`);
});
