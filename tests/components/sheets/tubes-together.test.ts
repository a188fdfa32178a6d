import { expect, test } from "vitest";
import { tubesTogether } from "../../../src/components/sheets/tubes-together.ts";

test("tubes of one part stand together, in the order of the plan, and what is no tube stays as it is", () => {
  expect(tubesTogether(["P a", "Q a", "P h watch glass", "R a", "limewater tubes"])).toEqual([
    "a: P Q R",
    "h watch glass: P",
    "limewater tubes",
  ]);
});
