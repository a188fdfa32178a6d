/** What a department shows: its own practicals beside ours, at the strengths of its own bottles. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { type ContentFault, ContentFaults } from "../../../src/authoring/faults.ts";
import { checkAll } from "../../../src/build/check-all.ts";
import { coursePaths, isHidden } from "../../../src/build/department/course.ts";
import { department } from "../../../src/build/department/department.ts";
import { houseTests } from "../../../src/build/department/standard-tests.ts";
import { readPracticalFile } from "../../../src/build/practical-files.ts";
import { sound } from "../broken.ts";

// A check may start threads that load the engine; the limit only ends what hangs.
vi.setConfig({ testTimeout: 180_000 });

let root: string;
const write = (path: string, text: string) => {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
};
const ours = (name: string, text = sound) => write(`src/content/practicals/${name}.mdx`, text);
const own = (name: string, text = sound) => write(`department/practicals/${name}.mdx`, text);
const says = (text: string) => write("department/department.yaml", text);

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "department-"));
  vi.stubEnv("IONWRIGHT_PROJECT", root);
});
afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(root, { recursive: true, force: true });
});

async function faults(): Promise<readonly ContentFault[]> {
  try {
    await checkAll(root, false);
    return [];
  } catch (error) {
    if (error instanceof ContentFaults) return error.faults;
    throw error;
  }
}

test("without a department the course is as it comes", () => {
  ours("shelf");
  expect(coursePaths(root)).toEqual(["src/content/practicals/shelf.mdx"]);
  expect(department().name).toBe("Ionwright");
});

test("own practicals stand beside ours, one of the same name takes its place, and what is hidden is left out", () => {
  for (const name of ["shelf", "tin", "jar"]) ours(name);
  for (const name of ["tin", "quay"]) own(name);
  says("practicals: { hide: [jar] }");
  expect(coursePaths(root)).toEqual([
    "src/content/practicals/shelf.mdx",
    "department/practicals/quay.mdx",
    "department/practicals/tin.mdx",
  ]);
  says("practicals: { show: [quay, jar] }");
  expect(coursePaths(root)).toEqual(["src/content/practicals/jar.mdx", "department/practicals/quay.mdx"]);
  expect(["/practicals/jar/", "/practicals/tin/", "/practicals/none/", "/practicals/"].map(isHidden)).toEqual([
    false,
    true,
    false,
    false,
  ]);
});

test("a strength left to the house is that of the school's bottle, one the author named stays", () => {
  const text = sound.replace("{ add: NaOH(aq), drops: 5 }", "{ add: NaOH(aq), drops: 5, at: 0.8 mol/dm3 }");
  says("reagents: { strengths: { NaOH(aq): 0.5 mol/dm3 } }");
  const read = readPracticalFile("shelf.mdx", text);
  if ("faults" in read) throw new Error("the practical does not read");
  const strengths = read.practical.parts.flatMap(({ tests }) =>
    tests.flatMap(({ steps }) =>
      steps.flatMap((step) => (step.do === "add" && step.reagent === "NaOH(aq)" ? [step.at?.molPerDm3] : [])),
    ),
  );
  expect(strengths.slice(0, 2)).toEqual([0.8, 0.5]);
  expect(read.atHouse).toEqual(["NaOH(aq) at 0.5 mol/dm3"]);
});

test("a practical that no longer follows at the school's strengths is refused, and the strengths are named", async () => {
  ours("shelf");
  expect(await faults()).toEqual([]);
  // So weak an alkali does not take aluminium hydroxide back into solution.
  says("reagents: { strengths: { NaOH(aq): 0.01 mol/dm3 } }");
  const found = await faults();
  expect(found.length).toBeGreaterThan(0);
  for (const fault of found) {
    expect(fault.file).toBe("src/content/practicals/shelf.mdx");
    expect(fault.found).toMatch(/, with the school's NaOH\(aq\) at 0\.01 mol\/dm3$/);
    expect(fault.advice).toContain("department.yaml");
  }
  // A practical that is not shown is not held against them.
  says("reagents: { strengths: { NaOH(aq): 0.01 mol/dm3 } }\npracticals: { hide: [shelf] }");
  expect(await faults()).toEqual([]);
});

test("what is wrong at the usual strengths too is not laid to the school's", async () => {
  ours("shelf", sound.replace("a(i): { precipitate: white }", "a(i): { precipitate: blue }"));
  says("reagents: { strengths: { NH3(aq): 1.9 mol/dm3 } }");
  const found = await faults();
  expect(found.map(({ what }) => what)).toContain("record R a(i)");
  for (const fault of found) expect(fault.found).not.toContain("the school's");
});

test("a practical that needs a reagent the school does not keep is refused at its step; no test with it is advised", async () => {
  ours("shelf");
  says('reagents: { notKept: [NaOH(aq), "K3[Fe(CN)6](aq)"] }');
  const found = await faults();
  expect(found[0]).toMatchObject({ what: "part a: a reagent the school does not keep", stated: "NaOH(aq)" });
  expect(houseTests().flatMap(({ tests }) => tests.flat().map(({ add }) => add))).not.toContain("NaOH(aq)");
});

test("a paper may offer the school's own list of ions", async () => {
  ours(
    "shelf",
    sound.replace(/cations: \[.*\]/, "cations: department").replace(/anions: \[.*\]/, "anions: department"),
  );
  says(
    "ions: { cations: [NH4+, Mg^2+, Ca^2+, Al^3+, Cu^2+, Fe^2+, Fe^3+, Zn^2+, Pb^2+], anions: [Cl-, NO3-, SO4^2-, CO3^2-] }",
  );
  expect(await faults()).toEqual([]);
  says("name: No list here");
  expect((await faults())[0]).toMatchObject({ what: "paper > cations", line: 12 });
});

test("a department's file with a fault stops the check and is named itself", async () => {
  ours("shelf");
  says("nam: x");
  expect(await faults()).toMatchObject([{ file: "department/department.yaml", line: 1, what: "nam" }]);
});

test("the folder may be another one of the project, or none", () => {
  write("science/department.yaml", "name: Elsewhere");
  vi.stubEnv("IONWRIGHT_DEPARTMENT", "science");
  expect(department().name).toBe("Elsewhere");
  vi.stubEnv("IONWRIGHT_DEPARTMENT", "");
  expect(department().name).toBe("Ionwright");
  vi.stubEnv("IONWRIGHT_DEPARTMENT", "../outside");
  expect(() => department()).toThrow("IONWRIGHT_DEPARTMENT is no folder of the project");
});
