import { defineConfig } from "vitest/config";
import { wordsOf } from "./scripts/words-of.ts";

const SITE_TESTS = ["tests/browser/**/*.test.ts", "tests/build-output/**/*.test.ts"];
const GERMAN = "tests/words/de/**/*.test.{ts,tsx}";

export default defineConfig({
  test: {
    reporters: ["default", ["json", { outputFile: ".cache/test-report.json" }]],
    projects: [
      {
        extends: true,
        test: {
          name: "unit",
          environment: "node",
          include: ["tests/**/*.test.{ts,tsx}"],
          exclude: [...SITE_TESTS, GERMAN],
          maxWorkers: "100%",
          // A whole practical with all its borders takes seconds, on a busy machine a minute; the limit only ends what hangs.
          testTimeout: 180_000,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        // What the engine and the pages say in another language: the same modules with the words of that one.
        resolve: { alias: wordsOf("de") },
        test: {
          name: "german",
          environment: "node",
          include: [GERMAN],
          maxWorkers: "100%",
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          name: "site",
          environment: "node",
          include: SITE_TESTS,
          globalSetup: ["tests/browser/setup/built-site.ts"],
          setupFiles: ["tests/browser/setup/closing.ts"],
          // One browser at a time: two on two cores make every wait longer, not the run shorter.
          fileParallelism: false,
          testTimeout: 30_000,
          hookTimeout: 60_000,
          // A busy machine may take seconds over what a reader sees at once.
          expect: { poll: { timeout: 15_000 } },
          // After the unit tests, so that no wait in a browser competes with the solver for a core.
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
