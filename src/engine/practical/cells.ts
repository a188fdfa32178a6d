/** The lines of the record: how the tests of a procedure are counted and named. Apart from the schemas, for the bench runs without zod. */
import type { Part, Procedure, Test } from "./procedure.ts";

/** Labels of the tests of a part, in order. */
export const ROMAN = ["i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii"] as const;

/** One line of the record, with its place in the procedure. */
export interface Cell {
  /** "a(ii)", or "b" when part b has one test. */
  id: string;
  part: Part;
  test: Test;
  /** Place of the test within its part, from 0. */
  index: number;
}

/** The lines of the record in the order of the paper. */
export function cellsOf(parts: Procedure): Cell[] {
  return parts.flatMap((of) =>
    of.tests.map((one, index) => ({
      id: of.tests.length === 1 ? of.label : `${of.label}(${one.label ?? ROMAN[index]})`,
      part: of,
      test: one,
      index,
    })),
  );
}
