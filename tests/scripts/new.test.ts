/** The command that writes a practical: its flags, its questions, and that it never writes over a file. */
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { ask } from "../../scripts/new/ask.ts";
import { readOptions } from "../../scripts/new/options.ts";
import { wantedOf } from "../../scripts/new/wanted-of.ts";

// The command loads the engine in a process of its own; the limit only ends what hangs.
vi.setConfig({ testTimeout: 180_000 });

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "new-"));
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

/** Runs the command on a project that holds nothing. */
function run(...args: string[]): { said: string; failed: boolean } {
  try {
    const said = execFileSync(process.execPath, [resolve("scripts/new.ts"), ...args], {
      env: { ...process.env, IONWRIGHT_PROJECT: root },
      stdio: ["ignore", "pipe", "pipe"],
      encoding: "utf8",
    });
    return { said, failed: false };
  } catch (error) {
    const { stdout, stderr } = error as { stdout: string; stderr: string };
    return { said: stdout + stderr, failed: true };
  }
}

const ASKED = ["--title", "A tin from the quay", "--samples", "Q=CuCl2*2H2O", "--tests", "sodium-hydroxide, halide"];
const IONS = ["--cations", "Cu^2+, Zn^2+", "--anions", "Cl-, Br-"];
const FILE = "department/practicals/a-tin-from-the-quay.mdx";

test("a practical is written that passes the check, and a second time it is left alone", () => {
  const first = run(...ASKED, ...IONS);
  expect(first).toEqual({ failed: false, said: expect.stringContaining(`Written to ${FILE}. It passes the check.`) });
  const mine = `${readFileSync(join(root, FILE), "utf8")}My own words.\n`;
  writeFileSync(join(root, FILE), mine);
  const second = run(...ASKED, ...IONS, "--minutes", "40");
  expect(second).toEqual({
    failed: true,
    said: expect.stringContaining(`${FILE} is there already and stays as it is.`),
  });
  expect(readFileSync(join(root, FILE), "utf8")).toBe(mine);
});

test("what cannot be is refused in sentences, nothing is written, and nobody waits for an answer", () => {
  const none = run();
  expect(none.failed).toBe(true);
  expect(none.said).toContain("--title: found nothing");
  expect(none.said).toContain("--samples: found no sample");
  expect(none.said).toContain("--tests: found no test");
  const lead = run("--title", "Lead", "--samples", "L=PbSO4", "--tests", "halide", ...IONS);
  expect(lead).toEqual({
    failed: true,
    said: expect.stringContaining("sample L: the answer: found Pb^2+ and SO4^2- not among the ions"),
  });
  expect(`${none.said}${lead.said}`).not.toMatch(/^\s+at /m);
  expect(existsSync(join(root, "department"))).toBe(false);
});

describe("flags", () => {
  const wanted = (...args: string[]) => {
    const read = readOptions(args);
    if (read === "help" || "fault" in read) throw new Error("no flags");
    return wantedOf(read.typed, 13);
  };

  test("each has its default", () => {
    expect(wanted(...ASKED)).toEqual({
      name: "a-tin-from-the-quay",
      wanted: {
        title: "A tin from the quay",
        summary: "One sample, Q, without a label. Its author writes a sentence or two here.",
        level: "core",
        minutes: 28,
        order: 13,
        samples: [{ label: "Q", salt: "CuCl2*2H2O" }],
        given: "solution",
        concentration: "0.1 mol/dm3",
        tests: ["sodium-hydroxide", "halide"],
        cations: "school",
        anions: "school",
      },
    });
  });

  test.each([
    [["--name", "../../etc/passwd"], '--name: found "../../etc/passwd"'],
    [["--name", "Quay Store"], '--name: found "Quay Store"'],
    [["--samples", "Q: CuCl2"], '--samples: found "Q: CuCl2"'],
    [["--tests", "litmus"], '--tests: found "litmus", expected sodium-hydroxide'],
    [["--given", "gas"], '--given: found "gas", expected solution, solid or both.'],
    [["--minutes", "half an hour"], '--minutes: found "half an hour", expected a whole number.'],
  ])("%j is refused", (more, sentence) => {
    expect(wanted(...ASKED, ...more)).toEqual({ faults: expect.arrayContaining([expect.stringContaining(sentence)]) });
  });

  test("an unknown one is named", () => {
    expect(readOptions(["--titel", "x"])).toEqual({ fault: "Unknown option '--titel'." });
  });
});

describe("questions", () => {
  const answering = (answers: string[]) => {
    const asked: string[] = [];
    const lines = {
      question: async (text: string) => {
        asked.push(text.split("?")[0]);
        return answers.shift() ?? "";
      },
    };
    return { asked, lines };
  };

  test("only what is not said is asked; an empty answer leaves the default", async () => {
    const { asked, lines } = answering(["Q=CuCl2*2H2O", "", "halide", "", "department"]);
    expect(await ask(lines, { title: "A tin" })).toEqual({
      title: "A tin",
      samples: "Q=CuCl2*2H2O",
      tests: "halide",
      anions: "department",
    });
    expect(asked).toHaveLength(5);
  });

  test("what is needed is asked again, but not for ever", async () => {
    const { asked, lines } = answering([]);
    expect(await ask(lines, {})).toEqual({});
    expect(asked.filter((question) => question === "What is it called")).toHaveLength(3);
  });
});

test("the file it must not write over may also be a folder's", () => {
  mkdirSync(join(root, FILE), { recursive: true });
  expect(run(...ASKED, ...IONS).failed).toBe(true);
});
