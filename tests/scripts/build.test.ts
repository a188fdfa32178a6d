import { expect, test } from "vitest";
import { failureText } from "../../scripts/build.ts";
import { SettingFault } from "../../scripts/site-address.ts";

class ContentFaults extends Error {
  override name = "ContentFaults";
}

const MESSAGE = "2 faults\n\nsrc/content/practicals/a.mdx:3:4: the filtrate is blue, not colourless.";

test("faults in the content print their message and no stack", () => {
  expect(failureText(new ContentFaults(MESSAGE))).toBe(MESSAGE);
});

test("they do so when another error wraps them", () => {
  const wrapped = new Error("rendering failed", { cause: new Error("hook", { cause: new ContentFaults(MESSAGE) }) });
  expect(failureText(wrapped)).toBe(MESSAGE);
});

test("a setting that cannot be used prints its message only", () => {
  expect(failureText(new SettingFault("IONWRIGHT_BASE is odd."))).toBe("IONWRIGHT_BASE is odd.");
});

test("a fault of the program keeps its stack", () => {
  expect(failureText(new TypeError("x is undefined"))).toMatch(/^The build failed: TypeError: x is undefined\n\s+at /);
});

test("an error that causes itself ends", () => {
  const circle = new Error("round");
  circle.cause = circle;
  expect(failureText(circle)).toContain("round");
});
