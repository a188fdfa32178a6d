/** What a result worked out for a practical hangs on, as text: the practical, and what of the department goes into it. */
import type { Practical } from "../../engine/practical.ts";
import { department } from "./department.ts";

export const keyOf = (practical: Practical): string => JSON.stringify([practical, houseOf()]);

/** What of the department decides what is worked out: strengths, tests that cannot be done, glass and class. Its name decides nothing. */
export function houseOf(): unknown[] {
  const { strengths, notKept, ions, tubes, class: own } = department();
  return [strengths, notKept, ions, tubes, own];
}
