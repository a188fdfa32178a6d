/** The forms of the steps that part a tube or change its temperature. */
import { expect, test } from "vitest";
import { step } from "../../../src/engine/practical/step.ts";

test.each([
  [{ cool: true }, { do: "cool" }],
  [{ wash: true }, { do: "wash" }],
  [{ filter: "filtrate" }, { do: "filter", keep: "filtrate" }],
  [{ filter: "residue" }, { do: "filter", keep: "residue" }],
  [{ warm: true }, { do: "warm" }],
])("%j", (written, read) => {
  expect(step.parse(written)).toEqual(read);
});

test.each([
  [{ cool: "5 min" }, "expected true"],
  [{ wash: "water" }, "expected true"],
  [{ filter: true }, "expected what is kept: filtrate or residue"],
])("%j is refused", (written, says) => {
  const read = step.safeParse(written);
  expect(read.success).toBe(false);
  expect(read.error?.issues.map(({ message }) => message).join()).toContain(says);
});
