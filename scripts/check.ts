/** Checks all course content with the engine: `node scripts/check.ts`. */
import { resolve } from "node:path";
import { ContentFaults } from "../src/authoring/faults.ts";
import { useCache } from "../src/build/cache/cache.ts";
import { checkAll } from "../src/build/check-all.ts";
import { useDepartment } from "../src/build/department/department.ts";
import { unconfirmed } from "../src/build/new-practical/unconfirmed.ts";

const ROOT = resolve(import.meta.dirname, "..");

try {
  useCache(ROOT);
  useDepartment(ROOT);
  const count = await checkAll(ROOT, false);
  console.log(`${count} practicals checked with the engine: every observation and answer agrees.`);
  for (const sentence of unconfirmed(ROOT)) console.log(sentence);
} catch (error) {
  if (!(error instanceof ContentFaults)) throw error;
  console.error(error.message);
  process.exitCode = 1;
}
