import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { downloadAddresses, namedForNothing, tooLong } from "./house.ts";
import { ROOT, sourceFiles } from "./source-files.ts";

const src = sourceFiles("src", [".ts", ".tsx", ".astro", ".css", ".mdx"]);

describe("the house as it stands", () => {
  test("no source file is longer than 400 lines", () => {
    expect(tooLong(src)).toEqual([]);
  });

  test("every file is named after its subject", () => {
    const rest = ["tests", "scripts"].flatMap((folder) => [...sourceFiles(folder, [".ts", ".tsx"]).keys()]);
    expect(namedForNothing([...src.keys(), ...rest])).toEqual([]);
  });

  test("the lockfile holds no download address", () => {
    const lockfile = readFileSync(join(ROOT, "package-lock.json"), "utf8");
    expect(lockfile).toContain('"integrity"');
    expect(downloadAddresses(lockfile)).toEqual([]);
  });
});

describe("the check itself", () => {
  test("counts lines, and lets data and prose be long", () => {
    const long = "x\n".repeat(401);
    const files = new Map([
      ["src/engine/bench/vessel.ts", long],
      ["src/engine/bench/step.ts", "x\n".repeat(400)],
      ["src/engine/constants/log-k.ts", long],
      ["src/content/method/notes.mdx", long],
    ]);
    expect(tooLong(files)).toEqual([
      "src/engine/bench/vessel.ts has 401 lines; 400 are allowed. Move one of its subjects into a file of its own.",
    ]);
  });

  test("finds names that say nothing, in files and folders", () => {
    const paths = ["src/utils.ts", "src/helpers/a.ts", "src/a/misc.test.ts", "src/Common.astro", "src/commonion.ts"];
    expect(namedForNothing(paths).map((report) => report.split(":")[0])).toEqual(paths.slice(0, 4));
  });

  test("finds a download address", () => {
    expect(downloadAddresses('{\n  "resolved": "https://packages.invalid/a.tgz"\n}')).toHaveLength(1);
  });
});
