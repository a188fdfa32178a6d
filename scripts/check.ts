/** Checks all course content with the engine: `node scripts/check.ts`. */
import { resolve } from "node:path";
import { checkContent } from "../src/build/check-content.ts";
import { ContentFaults } from "../src/build/faults.ts";

try {
  const count = checkContent(resolve(import.meta.dirname, ".."));
  console.log(`${count} practicals checked with the engine: every observation and answer agrees.`);
} catch (error) {
  if (!(error instanceof ContentFaults)) throw error;
  console.error(error.message);
  process.exitCode = 1;
}
