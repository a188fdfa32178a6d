/** The command that writes and lists cartridges: what it refuses and what it says. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, expect, test } from "vitest";
import { readOptions } from "../../scripts/cartridge/options.ts";
import { writeCartridge } from "../../src/build/cartridge/write-cartridge.ts";
import { AWKWARD } from "../build/cartridge/courses.ts";

const folder = mkdtempSync(join(tmpdir(), "cartridge-"));
afterAll(() => rmSync(folder, { recursive: true }));

const root = resolve(import.meta.dirname, "../..");
const run = (args: string[], site = "") =>
  spawnSync(process.execPath, ["scripts/cartridge.ts", ...args], {
    cwd: root,
    encoding: "utf8",
    env: { ...process.env, IONWRIGHT_SITE: site, IONWRIGHT_BASE: "" },
  });

test("options", () => {
  expect(readOptions([])).toEqual({ asked: { out: "ionwright.imscc" } });
  expect(readOptions(["--out", "a.imscc"])).toEqual({ asked: { out: "a.imscc" } });
  expect(readOptions(["--read", "a.imscc"])).toEqual({ asked: { read: "a.imscc" } });
  expect(readOptions(["--help"])).toBe("help");
  expect(readOptions(["--read", "a", "--out", "b"])).toEqual({ fault: expect.stringContaining("one of them") });
  expect(readOptions(["--read="])).toEqual({ fault: "Found no name of a file, expected one." });
  expect(readOptions(["--output", "b"])).toEqual({
    fault: expect.stringMatching(/^Unknown option '--output'.*Expected only --out or --read\.$/),
  });
});

test("without the site's address nothing is written, and it is said what to give", () => {
  const { status, stderr } = run(["--out", join(folder, "none.imscc")]);
  expect(status).toBe(1);
  expect(stderr).toMatch(/^IONWRIGHT_SITE is not set\..*IONWRIGHT_SITE=https:\/\/school\.example/);
  expect(stderr).not.toMatch(/ at .*\.ts/);
});

test("a cartridge is listed", () => {
  const file = join(folder, "good.imscc");
  writeFileSync(file, writeCartridge(AWKWARD));
  const { status, stdout } = run(["--read", file]);
  expect(status).toBe(0);
  expect(stdout).toContain('Salts & "acids" <for all>: 2 folders, 3 links, 2 questions.');
  expect(stdout).toContain("    Practice: http://localhost:4321/p/#seed=4");
});

test("a file that is none, or not there, is refused without a stack", () => {
  const file = join(folder, "bad.imscc");
  writeFileSync(file, "no zip");
  for (const [name, message] of [
    [file, /no zip archive/],
    [join(folder, "gone.imscc"), /no such file/],
  ] as const) {
    const { status, stderr } = run(["--read", name]);
    expect(status).toBe(1);
    expect(stderr).toMatch(message);
    expect(stderr).not.toMatch(/ at .*\.ts/);
  }
});
