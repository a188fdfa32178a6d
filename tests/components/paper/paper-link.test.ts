import fc from "fast-check";
import { expect, test } from "vitest";
import { fromFragment, LONGEST_CODE, MOST_UNPACKED, toFragment } from "../../../src/components/paper/paper-link.ts";

const PAPER = {
  title: "Jars",
  samples: [{ label: "P", given: "solid" }],
  paper: { cations: "school", anions: "school" },
  parts: [],
};

test("a paper comes out of its link as it went in", async () => {
  expect(await fromFragment(await toFragment(PAPER))).toEqual({ written: PAPER });
});

test("a link is made of letters that an address takes as they are", async () => {
  expect(await toFragment({ title: "¿ÿþ ☃".repeat(30) })).toMatch(/^#paper=[\w-]+$/);
});

test.each([
  ["no code", "#paper=", "damaged"],
  ["letters that are no code", "#paper=%%%", "damaged"],
  ["a code that is cut off", async () => (await toFragment(PAPER)).slice(0, 30), "damaged"],
  ["more letters than a link has", `#paper=${"A".repeat(LONGEST_CODE + 1)}`, "letters long"],
  ["what unpacks to very much", () => toFragment("x".repeat(20_000_000)), "unpacks to more"],
  ["just too much", () => toFragment("x".repeat(MOST_UNPACKED)), "unpacks to more"],
])("%s is refused in words", async (_, fragment, words) => {
  const found = await fromFragment(typeof fragment === "string" ? fragment : await fragment());
  expect("refused" in found && found.refused).toContain(words);
});

test("any code is read or refused, never thrown", async () => {
  await fc.assert(
    fc.asyncProperty(fc.string({ maxLength: 200 }), async (code) => {
      const found = await fromFragment(`#paper=${code}`);
      expect("written" in found || "refused" in found).toBe(true);
    }),
    { seed: 4, numRuns: 300 },
  );
});
