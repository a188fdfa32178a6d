/** Events in words: behaviour from the specification. */
import { expect, test } from "vitest";
import { wordEvent } from "../../../src/components/carry-out/event-words.ts";
import type { BenchEvent } from "../../../src/engine/bench/prediction.ts";

test.each<[BenchEvent, string]>([
  [{ kind: "gas leaves", phase: "CO2(g)", cm3: 4.84 }, "CO2 comes off: 4.8 cm3 as bubbles."],
  [{ kind: "gas leaves", phase: "NH3(g)", cm3: 4.84 }, "NH3 comes off: 4.8 cm3."],
  [{ kind: "precipitate forms", phase: "BaSO4(s)", gramsPerDm3: 7.78 }, "BaSO4 forms, 7.8 g/dm3 of mixture."],
  [
    { kind: "precipitate passes", phase: "Ag2SO3(s)" },
    "Ag2SO3 forms where a drop lands, and dissolves again when shaken.",
  ],
  [
    { kind: "precipitate dissolves", phase: "Zn(OH)2(s, fresh)", dissolved: 1 },
    "All but a trace of the Zn(OH)2 dissolves.",
  ],
])("%j", (event, words) => {
  expect(wordEvent(event)).toBe(words);
});
