/** The longest list a paper may name comes to rest with everything on the bench: no practical stops the build over its own ions. */
import { expect, test } from "vitest";
import { cannotBe, pairsOf } from "../../../src/engine/bench/allowed-salts.ts";
import { usableReagents } from "../../../src/engine/bench/operations.ts";
import { ION_LISTS } from "../../../src/engine/constants/ions.ts";
import { statement } from "../../../src/engine/practical.ts";
import { cm3, show, solve, take, warm } from "./show.ts";

const solution = { given: "solution", concentration: { molPerDm3: 0.1 } } as const;
const salts = pairsOf(statement.parse(ION_LISTS.advanced)).filter(
  (salt) => cannotBe(salt, solution, solve) === undefined,
);

test.each(usableReagents)("every salt with %s, cold and warm", (reagent) => {
  const add = reagent.endsWith("(s)") ? { add: reagent, pieces: 1 } : cm3(reagent);
  expect(salts.length).toBeGreaterThan(100);
  for (const { ions } of salts) expect(show(ions, [take, add], [warm])).toHaveLength(2);
});
