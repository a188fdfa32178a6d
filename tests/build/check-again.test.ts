/** Practicals that have not changed are not checked again, whoever asks; one that has is. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, expect, test } from "vitest";
import { ContentFaults } from "../../src/authoring/faults.ts";
import { cacheIn } from "../../src/build/cache/cache.ts";
import { checkAll, checkedInput } from "../../src/build/check-all.ts";
import { BROKEN } from "./broken.ts";

const root = mkdtempSync(join(tmpdir(), "checked-"));
afterEach(() => rmSync(root, { recursive: true, force: true }));

test("faults of an earlier run are told again as they were, until the file changes", async () => {
  const cache = cacheIn(join(root, "cache"));
  const folder = join(root, "src/content/practicals");
  mkdirSync(folder, { recursive: true });
  const faultsOf = async () => {
    try {
      await checkAll(root, false, cache);
      return [];
    } catch (error) {
      if (error instanceof ContentFaults) return error.faults;
      throw error;
    }
  };
  writeFileSync(join(folder, "a.mdx"), BROKEN["a bad unit"]);
  const first = await faultsOf();
  expect(first.length).toBeGreaterThan(0);
  expect(await faultsOf()).toStrictEqual(first);

  // What the cache says is believed: a mark left in it comes back, so nothing was checked.
  cache.write("checked", checkedInput("src/content/practicals/a.mdx", BROKEN["a bad unit"]), []);
  expect(await faultsOf()).toEqual([]);
  writeFileSync(join(folder, "a.mdx"), `${BROKEN["a bad unit"]}\n`);
  expect((await faultsOf()).map(({ what }) => what)).toEqual(first.map(({ what }) => what));
});
