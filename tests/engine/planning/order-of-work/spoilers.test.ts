/** What handling could spoil, told where a procedure runs into it and nowhere else. The facts: common practice, no source. */
import { expect, test } from "vitest";
import { spoilers } from "../../../../src/engine/planning/order-of-work/spoilers.ts";
import { planned } from "../small-procedure.ts";

const take = { take: "1 cm3" };
const acid = { add: "HCl(aq)", volume: "2 cm3" };
const lead = { leadThrough: "limewater" };

/** What is said of a part with these steps, in another part that has nothing to mind before it. */
function said(...steps: object[]): string[] {
  const parts = [
    { label: "a", title: "nothing to mind", tests: [{ steps: [take, acid] }] },
    { label: "b", title: "under test", tests: [{ steps }] },
  ];
  const found = spoilers(planned(parts, { letters: ["P"] }));
  for (const { parts } of found) expect(parts).toEqual(["b"]);
  return found.map(({ says }) => says);
}

test.each([
  ["suck-back", [take, acid, { warm: true }, lead], /sucks the limewater back.*cracks hot glass/],
  ["suck-back from a heated solid", [{ take: "0.2 g" }, { heat: "strongly" }, lead], /sucks the limewater back/],
  ["a dropper shared", [take, acid, { add: "BaCl2(aq)", drops: 5 }], /each keeps its own dropper/],
  ["liquid on hot glass", [{ take: "0.2 g" }, { heat: "strongly" }, acid], /let it cool first, or the glass cracks/],
  ["drops into a hot tube", [take, { boil: "1 min" }, { add: "NaOH(aq)", drops: 3 }], /take it from the flame first/],
] as const)("%s is warned of", (_, steps, words) => {
  expect(said(...steps)).toEqual([expect.stringMatching(words)]);
});

test.each([
  ["a cold gas led through", [take, acid, lead]],
  ["one bottle twice", [take, acid, { add: "HCl(aq)", drops: 5 }]],
  ["a heated solid that has cooled", [{ take: "0.2 g" }, { heat: "strongly" }, { cool: true }, acid]],
  ["a tube warmed last", [take, acid, { warm: true }]],
] as const)("%s is not", (_, steps) => {
  expect(said(...steps)).toEqual([]);
});
