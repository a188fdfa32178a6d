import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { ContentFaults } from "../../../src/authoring/faults.ts";
import { checkAll } from "../../../src/build/check-all.ts";
import { checkAllPages } from "../../../src/build/pages/check-pages.ts";
import { ROOT } from "../../architecture/source-files.ts";

let site: string;
beforeEach(() => {
  site = mkdtempSync(join(tmpdir(), "equations-"));
  for (const folder of ["practicals", "ion-tests", "cautions"])
    mkdirSync(join(site, "src/content", folder), { recursive: true });
});
afterEach(() => rmSync(site, { recursive: true }));

test("every page of the site may be published", () => {
  expect(checkAllPages(ROOT)).toEqual([]);
});

test("faults of equations on any page are told together with those of practicals", async () => {
  const broken = join(import.meta.dirname, "broken");
  cpSync(join(broken, "charge-out-of-balance.mdx"), join(site, "src/content/ion-tests/iron.mdx"));
  cpSync(join(broken, "another-arrow.mdx"), join(site, "src/content/cautions/ammonia.mdx"));
  const practical = '---\ntitle: x\n---\n\n<Equation of="I2 -> I-" />\n';
  writeFileSync(join(site, "src/content/practicals/jar.mdx"), practical);
  let faults: readonly { file: string; what: string }[] = [];
  try {
    await checkAll(site, false);
  } catch (error) {
    if (!(error instanceof ContentFaults)) throw error;
    faults = error.faults;
  }
  const equations = faults.filter(({ what }) => what === "equation").map(({ file }) => file);
  expect(equations).toEqual(
    ["cautions/ammonia", "ion-tests/iron", "practicals/jar"].map((name) => `src/content/${name}.mdx`),
  );
  expect(faults.filter(({ what }) => what !== "equation").map(({ file }) => file)).toContain(
    "src/content/practicals/jar.mdx",
  );
});
