/** The standard tests as the department's bench can do them: with its own bottles, and without reagents it does not keep. */
import { STANDARD_TESTS, type StandardTest } from "../../engine/constants/standard-tests.ts";
import { standardPart, standardParts } from "../../engine/practical/standard-parts.ts";
import type { Part, Procedure } from "../../engine/practical.ts";
import { department } from "./department.ts";
import { atHouseStrengths } from "./strengths.ts";

export function houseTests(): readonly StandardTest[] {
  const { notKept } = department();
  const isDone = (test: StandardTest) => !test.tests.flat().some(({ add }) => notKept.includes(String(add)));
  return notKept.length === 0 ? STANDARD_TESTS : STANDARD_TESTS.filter(isDone);
}

/** A standard test as a part with this label, on a sample given so, at the school's strengths. */
export function housePart(...of: Parameters<typeof standardPart>): Part {
  const [part] = atHouseStrengths([standardPart(...of)], department());
  return part;
}

/** The tests of a list as parts for these samples, at the school's strengths. */
export const houseParts = (
  samples: Parameters<typeof standardParts>[0],
  list: readonly StandardTest[] = houseTests(),
): Procedure => atHouseStrengths(standardParts(samples, list), department());
