import { expect, test } from "vitest";
import { keepWords, megabytes, roomWords, standingWords } from "../../../src/components/keep/keep-words.ts";

const here = { version: "00000000000000aa", files: 476, bytes: 6_240_000 };
const newer = { ...here, version: "00000000000000bb", bytes: 6_300_000 };

test.each([
  [6_240_000, "6.2\u00a0MB"],
  [99_960_000, "100.0\u00a0MB"],
  [120_400_000, "120\u00a0MB"],
  [40_000, "less than 0.1\u00a0MB"],
])("%i bytes are said as %s", (bytes, words) => {
  expect(megabytes(bytes)).toBe(words);
});

test("the control says the size before anything is stored", () => {
  expect(keepWords(here, false)).toBe("Keep this course on this device: 6.2\u00a0MB");
  expect(keepWords(newer, true)).toBe("Fetch the newer edition");
});

test.each([
  [undefined, here, /not kept on this device/],
  [undefined, undefined, /cannot be reached now, so nothing can be fetched/],
  [here, here, /476 files, 6\.2\sMB\. It is the newest edition\./],
  [here, newer, /A newer edition is out, 6\.3\sMB in all/],
  [here, undefined, /whether a newer edition is out is not known/],
])("it is said how it stands", (kept, newest, words) => {
  expect(standingWords(kept, newest)).toMatch(words);
});

test("room is spoken of only where there is too little and the browser tells", () => {
  expect(roomWords(100, undefined)).toBeUndefined();
  expect(roomWords(100, 100)).toBeUndefined();
  expect(roomWords(6_240_000, 2_000_000)).toMatch(/takes 6\.2\sMB.*has 2\.0\sMB left/);
});
