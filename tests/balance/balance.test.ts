/** Every equation of the site is balanced, by our own reader and by another program where it is installed. */
import { describe, expect, test } from "vitest";
import { imbalance, isBalanced, parseEquation } from "../../src/engine/formula/equation.ts";
import { hasChemeq, imbalanceByChemeq, inItsNotation } from "./chemeq.ts";
import { everyEquation } from "./every-equation.ts";

if (!hasChemeq)
  console.warn("chemeq is not installed (Debian: apt-get install chemeq): its half of these tests is skipped");

/** chemeq is started once for every equation, which takes some milliseconds each. */
const MANY_PROCESSES = 60_000;

/** Of the changed equations one in so many is tried, to save time. */
const SAMPLE = 8;

describe.each(Object.entries(everyEquation))("%s", (_, equations) => {
  test("balance by our own reader", () => {
    expect(equations.length).toBeGreaterThan(0);
    expect(equations.filter((equation) => !isBalanced(parseEquation(equation)))).toEqual([]);
  });

  test.skipIf(!hasChemeq)("balance by chemeq", { timeout: MANY_PROCESSES }, () => {
    expect(equations.flatMap((equation) => imbalanceByChemeq(equation) ?? [])).toEqual([]);
  });

  // One more of the first substance: what passes above passes because it balances.
  test.skipIf(!hasChemeq)("do not balance by chemeq when changed", { timeout: MANY_PROCESSES }, () => {
    const changed = equations.filter((_, index) => index % SAMPLE === 0).map(oneMoreOfTheFirst);
    expect(changed.filter((equation) => imbalanceByChemeq(equation) === undefined)).toEqual([]);
  });
});

function oneMoreOfTheFirst(equation: string): string {
  const [first] = parseEquation(equation).left;
  return equation.replace(/^(?:[\d./]+ *)?/, `${first.coefficient + 1} `);
}

test.skipIf(!hasChemeq)("a charge that does not balance is found, which chemeq alone calls OK", () => {
  expect(imbalanceByChemeq("Fe^3+ -> Fe^2+")).toBe("Fe^3+ -> Fe^2+: charge 3 / 2");
  expect(imbalanceByChemeq("Fe^3+ + e- -> Fe^2+")).toBeUndefined();
  expect(imbalance(parseEquation("Fe^3+ -> Fe^2+")).charge).toBe(-1);
});

// By the manual: `Fe(CN)6^4-` for ions, `_s` and `_g` for states; hydrates are not in it.
test.each([
  ["Ag+(aq) + Cl-(aq) -> AgCl(s)", "Ag^+ + Cl^- -> AgCl_s"],
  ["2 Cu^2+ + [Fe(CN)6]^4-(aq) -> Cu2[Fe(CN)6](s)", "2 Cu^2+ + [Fe(CN)6]^4- -> Cu2(Fe(CN)6)_s"],
  ["CuSO4*5H2O(s) -> CuSO4(s) + 5 H2O(g)", "CuSO4(H2O)5_s -> CuSO4_s + 5 H2O_g"],
  ["CaSO3*0.5H2O(s) = Ca^2+ + SO3^2- + 0.5 H2O", "CaSO3_s + 1/2 H2O -> Ca^2+ + SO3^2- + 1/2 H2O"],
  ["Zn(OH)2(s, amorphous) + 2 H+ = Zn^2+ + 2 H2O", "Zn(OH)2_s + 2 H^+ -> Zn^2+ + 2 H2O"],
])("%s in its notation", (ours, its) => {
  expect(inItsNotation(ours)).toBe(its);
});
