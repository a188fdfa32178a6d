/** The standard tests as parts of a procedure, for samples of any form. */
import { testTitle } from "#words/standard-tests.ts";
import { STANDARD_TESTS, type StandardTest, type WrittenStep } from "../constants/standard-tests.ts";
import { ROMAN } from "./cells.ts";
import type { Part, Procedure } from "./procedure.ts";
import { step } from "./step.ts";

/** A sample given as a solid is first stirred into water, and one looks whether it dissolves. Amounts are common practice, no source. */
const FROM_SOLID: readonly WrittenStep[] = [{ take: "0.05 g" }, { add: "H2O(l)", volume: "1 cm3" }];

/** What a sample is given as, and its letter. */
interface Given {
  label: string;
  given: "solid" | "solution" | "both";
}

/** The steps of a standard test as an author writes them, one list for each observation. */
export function writtenTests(test: StandardTest, from: "solid" | "solution"): readonly (readonly WrittenStep[])[] {
  const takes = test.tests[0].some((one) => "take" in one);
  if (from === "solution" || !takes) return test.tests;
  return [FROM_SOLID, ...test.tests.map((steps) => steps.filter((one) => !("take" in one)))];
}

/**
 * One standard test as a part of a procedure.
 * @param label the part's letter; the standard list by itself uses the test's own name
 * @param from a solution is taken as it is, of a solid a little in water
 * @param samples letters; all samples when absent
 */
export function standardPart(test: StandardTest, label: string, from: "solid" | "solution", samples?: string[]): Part {
  const tests = writtenTests(test, from);
  return {
    label,
    title: testTitle(test.id, test.title),
    ...(samples && { samples }),
    from,
    tests: tests.map((steps, index) => ({
      ...(tests.length > 1 && { label: ROMAN[index] }),
      steps: steps.map((one) => step.parse(one)),
    })),
  };
}

/** Standard tests on these samples, named by what each is called: a test done on solids and on solutions makes a part of each. */
export function standardParts(samples: readonly Given[], list: readonly StandardTest[] = STANDARD_TESTS): Procedure {
  const letters = (solid: boolean) => samples.flatMap((one) => ((one.given === "solid") === solid ? [one.label] : []));
  return list.flatMap((test) =>
    (["solution", "solid"] as const).flatMap((from): Part[] => {
      const mine = letters(from === "solid");
      const label = from === "solution" ? test.id : `${test.id}, solid`;
      return mine.length === 0 ? [] : [standardPart(test, label, from, mine)];
    }),
  );
}
