import { describe, expect, test } from "vitest";
import { orderOfWork } from "../../../../src/engine/planning/order-of-work/order-of-work.ts";
import { planned } from "../small-procedure.ts";

const ALONE = { people: 1, burners: 1, partsInOrder: true };
const take = { take: "1 cm3" };
const drops = { add: "NaOH(aq)", drops: 5 };
const part = (label: string, ...steps: object[]) => ({ label, title: "A test", tests: [{ steps }] });

describe("one person", () => {
  test("fills the minutes in which a tube stands with the next part", () => {
    // By hand: a takes 0.5 + 0.5, stands 5, is written down in 0.5; b takes 0.5 + 0.5 + 0.5 for each of two samples, all within the 5.
    const paper = planned([part("a", take, drops, { stand: "5 min" }), part("b", take, drops)]);
    const { bench, least, whole, work } = orderOfWork(paper, ALONE);
    // P a from 0 to 1, Q a from 1 to 2; P may be written down from 6, Q from 7.
    expect(bench).toBe(7.5);
    expect(least).toBe(7.5);
    expect(whole).toBe(10 + 7.5 + 5);
    expect(work.map(({ sample, part }) => `${sample} ${part}`)).toEqual(["P a", "Q a", "P b", "Q b", "P a", "Q a"]);
  });

  test("keeps the order of the paper, or is free of it", () => {
    // By hand. In order: a for P and Q takes 3, b is begun in 2, the second stands 5 and is written down. Freed: b stands while a is done.
    const paper = planned([part("a", take, drops), part("b", take, drops, { stand: "5 min" })]);
    expect(orderOfWork(paper, ALONE).bench).toBe(3 + 2 + 5 + 0.5);
    expect(orderOfWork(paper, { ...ALONE, partsInOrder: false }).bench).toBe(2 + 5 + 0.5);
  });

  test("rinses when there are fewer tubes than parts and samples", () => {
    const paper = planned([part("a", take, drops), part("b", take, drops)]);
    const { work, bench, tubesInUse } = orderOfWork(paper, { ...ALONE, tubes: { "test-tube": 3 } });
    expect(work.map(({ rinsed }) => rinsed)).toEqual([false, false, false, true]);
    expect(bench).toBe(4 * 1.5 + 0.5);
    expect(tubesInUse).toBe(1);
  });
});

test("a rack that is full lets no tube in, and asks for no rinsing", () => {
  // By hand: a is begun in 1, stands 5, is written down in 0.5; with one place the second sample can only come after it.
  const paper = planned([part("a", take, drops, { stand: "5 min" })]);
  const { bench, work, tubesInUse } = orderOfWork(paper, { ...ALONE, places: 1 });
  expect(bench).toBe(6.5 + 6.5);
  expect(work.some(({ rinsed }) => rinsed)).toBe(false);
  expect(tubesInUse).toBe(1);
});

test("two people share the work and one burner", () => {
  const paper = planned([part("a", take, drops), part("b", take, { flame: true })], { letters: ["P", "Q"] });
  const { work, bench } = orderOfWork(paper, { ...ALONE, people: 2 });
  const flames = work.filter(({ burner }) => burner);
  expect(flames).toHaveLength(2);
  expect(flames[1].start).toBeGreaterThanOrEqual(flames[0].start + flames[0].minutes);
  expect(new Set(work.map(({ person }) => person))).toEqual(new Set([0, 1]));
  // By hand: a takes 1.5 on each side at once, then taking 0.5, then two flames of 3 min one after the other.
  expect(bench).toBe(1.5 + 0.5 + 6);
});

describe("what cannot be done is refused in words", () => {
  const paper = planned([part("a", take, drops, { warm: true }, { filter: "filtrate" })]);
  test.each([
    ["no burner", { ...ALONE, burners: 0 }, /burners: found 0, expected at least 1/],
    ["nobody", { ...ALONE, people: 0 }, /people: found 0, expected 1 or 2/],
    ["no number of people", { ...ALONE, people: Number.NaN }, /people: found NaN/],
    ["too small a rack", { ...ALONE, places: 1 }, /rack places: found 1, expected at least 2/],
    ["too few tubes", { ...ALONE, tubes: { "boiling tube": 1 } }, /boiling tubes: found 1, expected at least 2/],
  ])("%s", (_, hands, fault) => {
    expect(() => orderOfWork(paper, hands)).toThrow(fault);
  });
});
