/** What hands and burner do for a tube, and that whole tests take as long as they are planned for (tests/reference/bench-times.json). */
import { describe, expect, test } from "vitest";
import { DURATIONS } from "../../../../src/engine/constants/durations.ts";
import { QUARTERS } from "../../../../src/engine/planning/order-of-work/quarter-minutes.ts";
import { spoilers } from "../../../../src/engine/planning/order-of-work/spoilers.ts";
import { tubeWorkOf } from "../../../../src/engine/planning/order-of-work/tube-work.ts";
import times from "../../../reference/bench-times.json" with { type: "json" };
import { planned } from "../small-procedure.ts";

const work = (...tests: object[][]) =>
  tubeWorkOf(
    planned([{ label: "a", title: "A test", tests: tests.map((steps) => ({ steps })) }], { letters: ["P"] }),
  )[0];

const minutes = (of: ReturnType<typeof work>) =>
  of.turns.reduce((sum, turn) => sum + turn.work + turn.wait, 0) / QUARTERS;

const take = { take: "1 cm3" };
const alkali = { add: "NaOH(aq)", volume: "2 cm3" };
const gas = { testGas: "damp red litmus" };

const WHOLE: Record<string, object[][]> = {
  "drops, then excess": [[take, { add: "NaOH(aq)", drops: 5 }], [{ add: "NaOH(aq)", until: "in excess" }]],
  "warm with sodium hydroxide, test for ammonia": [[take, alkali, { warm: true }, gas]],
  "nitrate with foil, ammonia boiled off first": [
    [take, alkali, { boil: "1 min" }, { add: "Al(s)", pieces: 1 }, { warm: true }, gas],
  ],
  "silver or barium with acid": [[take, { add: "HNO3(aq)", volume: "1 cm3" }, { add: "AgNO3(aq)", volume: "1 cm3" }]],
  "acid on a carbonate, limewater": [[take, { add: "HCl(aq)", volume: "2 cm3" }, { testGas: "limewater" }]],
  "heat a solid, test the gas, look at the cold residue": [
    [{ take: "0.2 g" }, { heat: "gently" }, { testGas: "glowing splint" }, { heat: "strongly" }],
  ],
  "flame, cleaning included": [[{ flame: true }]],
  filter: [[{ filter: "filtrate" }]],
};

describe("a whole test takes the minutes the trade plans for it", () => {
  test.each(times.tests)("$what", ({ what, least, most }) => {
    // A filtering is always part of a test: what is taken and written down is not counted.
    const more = what === "filter" ? 1 : 0;
    expect(minutes(work(...WHOLE[what])) - more).toBeGreaterThanOrEqual(least);
    expect(minutes(work(...WHOLE[what])) - more).toBeLessThanOrEqual(most);
  });
});

describe("turns", () => {
  test("end with each line of the record, and before the burner comes in", () => {
    const { turns } = work([take, alkali, { warm: true }, gas], [{ add: "Al(s)", pieces: 1 }]);
    expect(turns.map(({ cells, burner, wait }) => [cells.join(), burner, wait])).toEqual([
      ["a(i)", false, 0],
      ["a(i)", true, 0],
      ["a(ii)", false, 0],
    ]);
  });

  test("do not part a gas from its test, even where the test is a line of its own", () => {
    const { turns } = work([take, { add: "HCl(aq)", volume: "2 cm3" }], [{ testGas: "limewater" }]);
    expect(turns.map(({ cells }) => cells)).toEqual([["a(i)", "a(ii)"]]);
  });

  test.each([
    ["a splint at the mouth", { testGas: "glowing splint" }],
    ["a delivery tube", { leadThrough: "limewater" }],
  ])("a heated solid cools only after its gas is tested in a line of its own, with %s", (_, test) => {
    const { turns } = work([{ take: "0.2 g" }, { heat: "strongly" }], [test], [{ add: "H2O(l)", volume: "2 cm3" }]);
    expect(turns.map(({ cells, burner, wait, waitsTo }) => [cells.join(), burner, wait / QUARTERS, waitsTo])).toEqual([
      ["a(i)", false, 0, undefined], // the solid is taken
      ["a(i),a(ii)", true, 2, "cool"], // heated, written down, the gas tested while it comes
      ["a(ii)", false, 0, undefined], // looked at cold
      ["a(iii)", false, 0, undefined], // water
    ]);
    expect(turns[1].steps.map(({ do: verb }) => verb)).toEqual([
      "heat solid",
      "leadThrough" in test ? "lead through" : "test gas",
    ]);
  });

  test("leave the tube alone where the paper lets it stand, cool or drip", () => {
    const { turns } = work([take, alkali, { stand: "5 min" }], [{ filter: "residue" }, { wash: true }]);
    expect(turns.map(({ wait, waitsTo }) => [wait / QUARTERS, waitsTo])).toEqual([
      [5, "stand"],
      [0, undefined],
      [4, "drip through the filter"],
      [0, undefined],
    ]);
  });

  test("let a heated solid cool before it is looked at cold, and before liquid touches it", () => {
    const { turns } = work([{ take: "0.2 g" }, { heat: "strongly" }], [{ add: "H2O(l)", volume: "2 cm3" }]);
    expect(turns.map(({ wait, waitsTo }) => [wait / QUARTERS, waitsTo])).toEqual([
      [0, undefined],
      [2, "cool"],
      [0, undefined],
      [0, undefined],
    ]);
  });
});

test("the cooling that is planned stands with what is to be minded", () => {
  const wet = [[{ take: "0.2 g" }, { heat: "strongly" }], [{ add: "H2O(l)", volume: "2 cm3" }]];
  const parts = [{ label: "a", title: "A test", tests: wet.map((steps) => ({ steps })) }];
  const [{ says }] = spoilers(planned(parts, { letters: ["P"] }));
  expect(says).toContain(`Planned for it: ${DURATIONS.cool.minutes} min.`);
});

test("tubes that can be rinsed are counted; a dry tube and a wire are not", () => {
  expect(work([take, alkali]).tubes).toEqual({ kind: "test-tube", count: 1 });
  expect(work([take, alkali, { warm: true }]).tubes).toEqual({ kind: "boiling tube", count: 1 });
  expect(work([take, alkali, { filter: "residue" }]).tubes).toEqual({ kind: "test-tube", count: 2 });
  expect(work([{ take: "0.2 g" }, { heat: "strongly" }]).tubes).toBeUndefined();
  expect(work([{ flame: true }]).tubes).toBeUndefined();
});
