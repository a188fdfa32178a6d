/** The standard tests as parts of a procedure, for samples of any form. */
import { STANDARD_TESTS, type StandardTest, type WrittenStep } from "../constants/standard-tests.ts";
import { ROMAN } from "./cells.ts";
import type { Part, Procedure } from "./procedure.ts";
import { step } from "./step.ts";

/** A sample given as a solid is first stirred into water: about a twentieth of a mole in each dm3. Common practice, no source. */
const FROM_SOLID: readonly WrittenStep[] = [{ take: "0.1 g" }, { add: "H2O(l)", volume: "2 cm3" }];

/** What a sample is given as, and its letter. */
interface Given {
  label: string;
  given: "solid" | "solution" | "both";
}

/**
 * One standard test as a part of a procedure.
 * @param label the part's letter; the standard list by itself uses the test's own name
 * @param from a solution is taken as it is, of a solid a little in water
 * @param samples letters; all samples when absent
 */
export function standardPart(test: StandardTest, label: string, from: "solid" | "solution", samples?: string[]): Part {
  const written = (steps: readonly WrittenStep[]) =>
    from === "solution" ? steps : steps.flatMap((one) => ("take" in one ? FROM_SOLID : [one]));
  return {
    label,
    title: test.title,
    ...(samples && { samples }),
    from,
    tests: test.tests.map((steps, index) => ({
      ...(test.tests.length > 1 && { label: ROMAN[index] }),
      steps: written(steps).map((one) => step.parse(one)),
    })),
  };
}

/** All standard tests on these samples, named by what the test is called: a test done on solids and on solutions makes a part of each. */
export function standardParts(samples: readonly Given[]): Procedure {
  const letters = (solid: boolean) => samples.flatMap((one) => ((one.given === "solid") === solid ? [one.label] : []));
  return STANDARD_TESTS.flatMap((test) =>
    (["solution", "solid"] as const).flatMap((from): Part[] => {
      const mine = letters(from === "solid");
      const label = from === "solution" ? test.id : `${test.id}, solid`;
      return mine.length === 0 ? [] : [standardPart(test, label, from, mine)];
    }),
  );
}
