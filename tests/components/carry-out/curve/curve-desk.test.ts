/** One question at a time, the newest of each curve, and never a page that waits for ever. */
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { type Drawer, openDesk, TIME_LIMIT } from "../../../../src/components/carry-out/curve/curve-desk.ts";
import type { CurveQuestion } from "../../../../src/components/carry-out/curve/curve-message.ts";
import type { CurveSource } from "../../../../src/engine/bench/changed-curve.ts";

const source: CurveSource = {
  sample: "S",
  given: "solution",
  part: { label: "a", title: "test", tests: [{ steps: [{ do: "shake" }] }] },
  test: 0,
};
const change = (molPerDm3: number) => ({ salt: "ZnSO4", molPerDm3 });

/** A worker that notes what it is asked and answers when the test says so. */
class Noted implements Drawer {
  static all: Noted[] = [];
  onmessage: Drawer["onmessage"] = null;
  onerror: Drawer["onerror"] = null;
  onmessageerror: Drawer["onmessageerror"] = null;
  asked: CurveQuestion[] = [];
  ended = false;
  constructor() {
    Noted.all.push(this);
  }
  postMessage(question: CurveQuestion): void {
    this.asked.push(question);
  }
  terminate(): void {
    this.ended = true;
  }
  says(data: unknown): void {
    this.onmessage?.call(this as unknown as Worker, { data } as MessageEvent);
  }
  refuses(refused: string, id = this.asked.at(-1)?.id): void {
    this.says({ id, answer: { refused } });
  }
  fails(): void {
    this.onerror?.call(this as unknown as Worker, {} as ErrorEvent);
  }
}

beforeEach(() => {
  Noted.all = [];
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});
const open = () => openDesk(() => new Noted());

test("no worker is started before the first question, and one serves all", async () => {
  const desk = open();
  expect(Noted.all).toHaveLength(0);
  const first = desk.ask("R-a", source, change(0.1));
  Noted.all[0].refuses("one");
  expect(await first).toEqual({ refused: "one" });
  const second = desk.ask("S-b", source, change(0.2));
  Noted.all[0].refuses("two");
  expect(await second).toEqual({ refused: "two" });
  expect(Noted.all).toHaveLength(1);
});

test("while the worker is busy only the newest question of a curve waits; other curves keep theirs", async () => {
  const desk = open();
  const answers = [
    desk.ask("R-a", source, change(0.1)),
    desk.ask("R-a", source, change(0.2)),
    desk.ask("S-b", source, change(0.3)),
    desk.ask("R-a", source, change(0.4)),
  ];
  const [worker] = Noted.all;
  expect(worker.asked).toHaveLength(1);
  worker.refuses("0.1");
  worker.refuses("next");
  worker.refuses("last");
  expect(worker.asked.map((question) => question.change.molPerDm3)).toEqual([0.1, 0.4, 0.3]);
  expect(await Promise.all(answers)).toEqual([{ refused: "0.1" }, undefined, { refused: "last" }, { refused: "next" }]);
});

test("an answer to another question is dropped", async () => {
  const desk = open();
  const before = desk.ask("R-a", source, change(0.1));
  const [worker] = Noted.all;
  worker.refuses("before");
  await before;
  const asked = desk.ask("R-a", source, change(0.2));
  const [first, second] = worker.asked.map(({ id }) => id);
  worker.refuses("said twice", first);
  worker.refuses("not asked", second + 1);
  worker.refuses("right", second);
  expect(await asked).toEqual({ refused: "right" });
});

test("a calculation that hangs is stopped, and the next question gets a new worker", async () => {
  const desk = open();
  const hangs = desk.ask("R-a", source, change(0.1));
  const waits = desk.ask("S-b", source, change(0.2));
  vi.advanceTimersByTime(TIME_LIMIT - 1);
  expect(Noted.all[0].ended).toBe(false);
  vi.advanceTimersByTime(1);
  expect(await hangs).toEqual({ refused: "the calculation took too long and was stopped" });
  expect(Noted.all[0].ended).toBe(true);
  // The old worker's answer comes all the same.
  Noted.all[0].refuses("too late", Noted.all[1].asked[0].id);
  Noted.all[1].refuses("in time");
  expect(await waits).toEqual({ refused: "in time" });
});

test("time spent waiting for one's turn does not count", async () => {
  const desk = open();
  desk.ask("R-a", source, change(0.1));
  const waits = desk.ask("S-b", source, change(0.2));
  vi.advanceTimersByTime(TIME_LIMIT - 1);
  Noted.all[0].refuses("just in time");
  vi.advanceTimersByTime(TIME_LIMIT - 1);
  Noted.all[0].refuses("also");
  expect(await waits).toEqual({ refused: "also" });
  expect(Noted.all).toHaveLength(1);
});

test("a worker that fails, or says what nobody understands, is replaced", async () => {
  const desk = open();
  const fails = desk.ask("R-a", source, change(0.1));
  Noted.all[0].fails();
  expect(await fails).toEqual({ refused: "the calculation failed" });
  const mumbles = desk.ask("R-a", source, change(0.1));
  Noted.all[1].says({ id: Noted.all[1].asked[0].id, answer: "42" });
  expect(await mumbles).toEqual({ refused: "the calculation gave an answer that cannot be read" });
  expect(Noted.all.map(({ ended }) => ended)).toEqual([true, true]);
});

test("a browser that starts no worker is told so", async () => {
  const desk = openDesk(() => {
    throw new Error("blocked");
  });
  expect(await desk.ask("R-a", source, change(0.1))).toEqual({ refused: "the calculation could not be started" });
});
