/** The forms of steps beside taking, adding and testing a gas. */
import { expect, test } from "vitest";
import { step } from "../../../src/engine/practical/step.ts";

test.each([
  [{ cool: true }, { do: "cool" }],
  [{ wash: true }, { do: "wash" }],
  [{ filter: "filtrate" }, { do: "filter", keep: "filtrate" }],
  [{ filter: "residue" }, { do: "filter", keep: "residue" }],
  [{ warm: true }, { do: "warm" }],
  [{ leadThrough: "limewater" }, { do: "lead through", liquid: "limewater", inExcess: false }],
  [
    { leadThrough: "limewater", until: "in excess", at: "0.01 mol/dm3" },
    { do: "lead through", liquid: "limewater", inExcess: true, at: { molPerDm3: 0.01 } },
  ],
  [{ indicator: "litmus" }, { do: "indicator", with: "litmus" }],
])("%j", (written, read) => {
  expect(step.parse(written)).toEqual(read);
});

test.each([
  [{ cool: "5 min" }, "expected true"],
  [{ wash: "water" }, "expected true"],
  [{ leadThrough: "water" }, "expected limewater"],
  [{ leadThrough: "limewater", until: "clear" }, 'expected "in excess"'],
  [{ indicator: "beetroot" }, "expected one of: litmus, universal indicator"],
  [{ filter: true }, "expected what is kept: filtrate or residue"],
])("%j is refused", (written, says) => {
  const read = step.safeParse(written);
  expect(read.success).toBe(false);
  expect(read.error?.issues.map(({ message }) => message).join()).toContain(says);
});
