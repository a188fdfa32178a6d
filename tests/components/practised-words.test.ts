import { expect, test } from "vitest";
import { practisedWords } from "../../src/components/map/practised-words.ts";
import type { Occasion } from "../../src/components/progress.ts";

const of = (...occasions: Occasion[]) => practisedWords({ version: 1, practical: "salt-works", occasions });

test("tells how often, when last and how well at best", () => {
  expect(of({ on: "2026-11-30", how: "walkthrough" })).toBe("You have practised this once, last on 30 November 2026.");
  expect(
    of(
      { on: "2026-12-01", how: "blind", marks: { earned: 9, of: 12 } },
      { on: "2026-12-02", how: "blind", marks: { earned: 5, of: 6 } },
      { on: "2026-12-03", how: "walkthrough" },
    ),
  ).toBe("You have practised this 3 times, last on 3 December 2026; at best 5 of 6 marks.");
});
