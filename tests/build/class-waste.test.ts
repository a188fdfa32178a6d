/** What the class sheet says of a waste bottle, held against the bench plan's rows that end in it: behaviour from the specification. */
import { expect, test } from "vitest";
import { classPage } from "../../src/build/class-sheet.ts";
import { practicalPaths, readPage, readPracticalFile } from "../../src/build/practical-files.ts";
import { walkthrough } from "../../src/build/walkthrough.ts";
import { createSolver } from "../../src/engine/equilibrium/solve.ts";

test("a chromate tube's lead bottle is labelled for chromium on the preparation sheet too", () => {
  const path = practicalPaths(process.cwd()).find((one) => one.endsWith("conservators-bench.mdx")) ?? "";
  const read = readPracticalFile(path, readPage(process.cwd(), path));
  if ("faults" in read) throw new Error(`${path} has faults`);
  const { plan } = walkthrough(read.practical);
  const kinds = plan.waste.filter(({ into }) => into === "lead waste bottle").flatMap((row) => row.kinds);
  expect(new Set(kinds)).toEqual(new Set(["lead", "chromium(VI)", "barium"]));
  const { needs } = classPage(read.practical, createSolver());
  const bottles = needs.waste.filter(({ into }) => into === "lead waste bottle");
  expect(bottles).toHaveLength(1);
  for (const kind of ["chromium(VI)", "barium"]) expect(bottles[0].how).toContain(kind);
});
