import { expect, test } from "vitest";
import {
  type Choice,
  fromAddress,
  handsOf,
  offerOf,
  toAddress,
  usualChoice,
} from "../../../src/components/prepare/order/order-choice.ts";

const turn = (burner: boolean) => ({ burner });
const WORK = [
  { turns: [turn(false)], tubes: { kind: "test-tube" as const, count: 1 } },
  { turns: [turn(false)], tubes: { kind: "test-tube" as const, count: 2 } },
  { turns: [turn(true)], tubes: { kind: "boiling tube" as const, count: 1 } },
];
const OFFER = offerOf(WORK, 45);
const USUAL = usualChoice(OFFER);

test("offers what makes a difference: no burner for a cold paper, no fewer tubes than one test takes", () => {
  expect(OFFER["test-tubes"]).toEqual({ least: 2, most: 3, usual: 3 });
  expect(OFFER["boiling-tubes"]).toBeUndefined();
  expect(OFFER.places).toEqual({ least: 2, most: 4, usual: 4 });
  expect(offerOf([{ turns: [turn(false)] }], 45).burners).toBeUndefined();
});

test.each<[Choice, string]>([
  [{}, ""],
  [{ people: 2, "test-tubes": 2 }, "people=2&test-tubes=2"],
  [{ burners: 2, places: 3, planning: 0, minutes: 90, free: 1 }, "burners=2&places=3&planning=0&minutes=90&free=1"],
])("%o goes into the address and comes out of it", (change, address) => {
  const choice = { ...USUAL, ...change };
  expect(toAddress(choice, OFFER)).toBe(address);
  expect(fromAddress(`?${address}`, OFFER)).toEqual({ choice, faults: [] });
});

test.each([
  ["people=3", "In the link, people: found “3”, expected a whole number from 1 to 2."],
  ["test-tubes=1e9", "In the link, test-tubes: found “1e9”, expected a whole number from 2 to 3."],
  ["places=", "In the link, places in the rack: found nothing, expected a whole number from 2 to 4."],
  [
    "minutes=<script>alert(1)</script>",
    "In the link, minutes allowed: found “<script>alert(1)</sc…”, expected a whole number from 5 to 300.",
  ],
])("%s is refused, and the choice stays the page's own", (search, fault) => {
  expect(fromAddress(search, OFFER)).toEqual({ choice: USUAL, faults: [fault] });
});

test("entries of somebody else stay, and one bad entry does not spoil the others", () => {
  expect(toAddress({ ...USUAL, people: 2 }, OFFER, "?R.a=x&people=1")).toBe("R.a=x&people=2");
  expect(fromAddress("?people=two&burners=2", OFFER).choice).toEqual({ ...USUAL, burners: 2 });
});

test("as many tubes as tests are no limit at all", () => {
  expect(handsOf(USUAL, OFFER)).toEqual({ people: 1, burners: 1, tubes: {}, planning: 10, partsInOrder: true });
  expect(handsOf({ ...USUAL, "test-tubes": 2, places: 3, free: 1 }, OFFER)).toEqual({
    people: 1,
    burners: 1,
    tubes: { "test-tube": 2 },
    places: 3,
    planning: 10,
    partsInOrder: false,
  });
});
