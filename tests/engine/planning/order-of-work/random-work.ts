/** Small random benches: a few tubes with a few turns each, and what there is to work with. */
import fc from "fast-check";
import type { Means, TubeWork } from "../../../../src/engine/planning/order-of-work/bench-work.ts";
import type { Step } from "../../../../src/engine/practical.ts";

/** The longest turn and the longest wait, quarter minutes. */
interface Longest {
  work: number;
  wait: number;
}

const turnsOf = (longest: Longest) =>
  fc
    .array(
      fc.record({
        cells: fc.constant<string[]>(["a"]),
        steps: fc.constant<Step[]>([]),
        work: fc.integer({ min: 1, max: longest.work }),
        burner: fc.boolean(),
        wait: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: longest.wait })),
      }),
      { minLength: 1, maxLength: 3 },
    )
    .map((list) => list.map((one, index) => (index === list.length - 1 ? { ...one, wait: 0 } : one)));

const glass = fc.option(
  fc.record({
    kind: fc.constantFrom("test-tube" as const, "boiling tube" as const),
    count: fc.integer({ min: 1, max: 2 }),
  }),
  { nil: undefined },
);

/** Parts in order, each with one or two tubes of the same work. At most `most` tubes. */
export const tubesOf = (most: number, longest: Longest = { work: 4, wait: 6 }): fc.Arbitrary<TubeWork[]> =>
  fc
    .array(fc.record({ turns: turnsOf(longest), glass, samples: fc.integer({ min: 1, max: 2 }) }), {
      minLength: 1,
      maxLength: most,
    })
    .map((parts) =>
      parts
        .flatMap(({ turns, glass, samples }, part) =>
          Array.from({ length: samples }, (_, s) => ({
            sample: "PQ"[s],
            part,
            turns,
            ...(glass && { tubes: glass }),
          })),
        )
        .slice(0, most),
    );

export const meansWith = (rinse: number): fc.Arbitrary<Means> =>
  fc.record(
    {
      people: fc.integer({ min: 1, max: 2 }),
      burners: fc.integer({ min: 1, max: 2 }),
      tubes: fc.record(
        { "test-tube": fc.integer({ min: 2, max: 3 }), "boiling tube": fc.integer({ min: 2, max: 3 }) },
        { requiredKeys: [] },
      ),
      places: fc.integer({ min: 2, max: 4 }),
      partsInOrder: fc.boolean(),
      rinse: fc.constant(rinse),
    },
    { requiredKeys: ["people", "burners", "tubes", "partsInOrder", "rinse"] },
  );
