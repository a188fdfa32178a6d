/** The command that lists unknowns: what it refuses, and what it says. */
import { execFileSync, spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { namedStore } from "../../scripts/unknowns/named-store.ts";
import { readOptions } from "../../scripts/unknowns/options.ts";
import { whitePrecipitates } from "../engine/deduction/white-precipitates.ts";

describe("options", () => {
  test("all of them", () => {
    expect(
      readOptions(["shelf", "--store", "CuSO4, ZnCl2;", "--samples", "3", "--hardness", "hard", "--list", "9"]),
    ).toEqual({
      asked: { practical: "shelf", store: ["CuSO4", "ZnCl2"], samples: 3, hardness: "hard", list: 9 },
    });
    expect(readOptions(["--help"])).toBe("help");
  });

  test("every fault at once, each with what was found and expected", () => {
    expect(readOptions(["--samples", "9", "--hardness", "evil", "--list", "0", "--store", ","])).toEqual({
      faults: [
        "Found no practical, expected one. Put a list of salts in quotes.",
        "--samples: found 9, expected a whole number from 1 to 8.",
        "--list: found 0, expected a whole number from 1 to 100.",
        "--hardness: found evil, expected one of easy, middling, hard, undecided.",
        '--store: found no salt, expected a list such as "CuSO4, ZnCl2".',
      ],
    });
    expect(readOptions(["shelf", "--sample", "3"])).toEqual({
      faults: [expect.stringMatching(/^Unknown option '--sample'.*--store, --samples, --hardness, --list/)],
    });
    expect(readOptions(["shelf", "--samples"])).toEqual({ faults: [expect.stringMatching(/--samples/)] });
  });
});

test("a store: salts of the paper, what it cannot use with the reason, and what is no salt", () => {
  const table = whitePrecipitates(["P"]);
  const { salts, leftOut, faults } = namedStore(table, [
    "ZnSO4*7H2O",
    "ZnSO4",
    "PbCl2",
    "NaCl",
    "water",
    "NaCl + KNO3",
    "))",
  ]);
  expect(salts.map((salt) => table.salts[salt].formula)).toEqual(["Zn^2+ SO4^2-"]);
  expect(leftOut).toEqual(
    [
      "PbCl2: Pb^2+ Cl- does not dissolve to 0.1 mol/dm3.",
      "NaCl: the paper does not offer Na+.",
      "NaCl + KNO3: the paper does not offer Na+ or K+.",
    ].map((line) => expect.stringContaining(line.replace(/ or K\+\.$/, ""))),
  );
  expect(faults).toHaveLength(2);
});

const root = resolve(import.meta.dirname, "../..");
const run = (...args: string[]) =>
  [process.execPath, ["scripts/unknowns.ts", ...args], { cwd: root, encoding: "utf8" }] as const;

test("the list itself: the store's own salts and no others, decided sets before the rest", () => {
  const text = execFileSync(...run("lamp-room-shelf", "--store", "ZnSO4, AlCl3, NH4Cl, KCl", "--list", "2"));
  expect(text).toContain("Left out: KCl: the paper does not offer K⁺.");
  // Three salts for three samples, sulfate on the one that does not share its anion: zinc sulfate is R.
  expect(text).toContain("2 sets can be made up");
  expect(text).toContain("R ZnSO₄, S AlCl₃, T NH₄Cl");
  expect(text).not.toContain("MgSO");
}, 60_000);

test("an unknown practical is refused with the names of those there are, without a stack", () => {
  const { status, stderr } = spawnSync(...run("attic"));
  expect(status).toBe(1);
  const names = readdirSync(resolve("src/content/practicals")).map((file) => file.replace(".mdx", ""));
  expect(stderr).toContain(`Found no practical attic, expected one of ${names.sort().join(", ")}, or the path`);
  expect(stderr).not.toMatch(/ at .*\.ts/);
});
