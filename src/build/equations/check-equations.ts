/** Checks every equation that authors wrote on a page. */
import type { ContentFault } from "../../authoring/faults.ts";
import { equationFaults } from "./equation-faults.ts";
import { findEquations } from "./find-equations.ts";
import { faultMaker } from "./page-fault.ts";

/** All faults in the equations of one page, in the order of the page. `file` is its path, for the report. */
export function checkEquations(file: string, page: string): ContentFault[] {
  const { equations, faults } = findEquations(file, page);
  const wrong = equations.flatMap(equationFaults).map(faultMaker(file, page));
  return [...faults, ...wrong].sort((a, b) => a.line - b.line || a.column - b.column);
}
