/** Checks every equation that authors wrote, on all pages. */
import { readdirSync } from "node:fs";
import { join, relative } from "node:path";
import type { ContentFault } from "../faults.ts";
import { readPage } from "../practical-files.ts";
import { equationFaults } from "./equation-faults.ts";
import { findEquations } from "./find-equations.ts";
import { faultMaker } from "./page-fault.ts";

/** All faults in the equations of one page, in the order of the page. `file` is its path, for the report. */
export function checkEquations(file: string, page: string): ContentFault[] {
  const { equations, faults } = findEquations(file, page);
  const wrong = equations.flatMap(equationFaults).map(faultMaker(file, page));
  return [...faults, ...wrong].sort((a, b) => a.line - b.line || a.column - b.column);
}

/** All faults in the equations of all MDX pages below a folder of the project. */
export function checkAllEquations(root: string, folder = "src/content"): ContentFault[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".mdx"))
    .sort()
    .map((name) => relative(root, join(root, folder, name)))
    .flatMap((path) => checkEquations(path, readPage(root, path)));
}
