import { expect, test } from "vitest";
import { blocksOf } from "../../../src/components/prepare/order/blocks.ts";

type Work = Parameters<typeof blocksOf>[0]["work"][number];

const work = (sample: string, start: number, more: Partial<Work> = {}) =>
  ({
    person: 0,
    part: "a",
    cells: ["a"],
    turn: 0,
    sample,
    start,
    minutes: 2,
    burner: true,
    rinsed: false,
    ...more,
  }) as Work;

test("tubes done in one go are one block, and each is left alone from the end of its own work", () => {
  const wait = { minutes: 5, to: "stand" } as const;
  const [block, ...others] = blocksOf({
    work: [work("P", 0, { wait }), work("Q", 2, { wait }), work("R", 4, { wait })],
  });
  expect(others).toEqual([]);
  expect(block).toMatchObject({ samples: ["P", "Q", "R"], start: 0, end: 6, wait });
  // 2 minutes of work each, then 5 alone: 2 to 7, 4 to 9, 6 to 11.
  expect(block.waits).toEqual([
    { from: 2, to: 7 },
    { from: 4, to: 9 },
    { from: 6, to: 11 },
  ]);
});

test("a tube that is not left alone draws nothing", () => {
  expect(blocksOf({ work: [work("P", 0)] })[0].waits).toEqual([]);
});
