import { expect, test } from "vitest";
import {
  type Draft,
  type DraftStatement,
  emptyDraft,
  emptyPart,
  emptySample,
} from "../../../src/components/paper/draft.ts";
import { withoutSample } from "../../../src/components/paper/remove-sample.ts";

const part = (label: string, samples: string[], seen = {}) => {
  const made = { ...emptyPart(label), samples };
  return { ...made, tests: made.tests.map((one) => ({ ...one, seen })) };
};
const paper = (change: Partial<Draft>): Draft => ({
  ...emptyDraft(),
  samples: ["P", "Q", "R"].map(emptySample),
  ...change,
});

test("the letter goes from parts on several samples, and what was recorded of it from every test", () => {
  const white = { precipitate: "white" } as const;
  const { draft, told } = withoutSample(
    paper({ parts: [part("a", ["P", "Q"], { P: white, Q: white }), part("b", [])] }),
    0,
  );
  expect(draft.samples.map(({ label }) => label)).toEqual(["Q", "R"]);
  expect(draft.parts.map(({ samples }) => samples)).toEqual([["Q"], []]);
  expect(draft.parts[0].tests[0].seen).toEqual({ Q: white });
  expect(told).toBe("Sample P is removed. Undo brings it all back.");
});

test("a part on it alone goes with it: without letters it would be done on all", () => {
  const { draft, told } = withoutSample(paper({ parts: [part("a", ["P"]), part("b", ["Q"]), part("c", ["P"])] }), 0);
  expect(draft.parts.map(({ label }) => label)).toEqual(["b"]);
  expect(told).toBe(
    "Sample P is removed, and with it parts a, c, which make no sense without it. Undo brings it all back.",
  );
});

test("so does a statement that is left with too few samples", () => {
  const statements: DraftStatement[] = [
    { says: "share", samples: ["P", "Q"], ion: "anion" },
    { says: "differ", samples: ["P", "Q", "R"], ion: "cation" },
    { says: "same", samples: ["Q", "R"] },
    { says: "contains", samples: ["P"], ion: "NH4+", count: "" },
    { says: "contains", samples: [], ion: "NH4+", count: "1" },
  ];
  const { draft, told } = withoutSample(paper({ statements }), 0);
  expect(draft.statements).toEqual([{ ...statements[1], samples: ["Q", "R"] }, statements[2], statements[4]]);
  expect(told).toContain("and with it 2 statements");
});

test("of two samples with one letter the other keeps what is said of it", () => {
  const twins = paper({ samples: ["P", "P"].map(emptySample), parts: [part("a", ["P"])] });
  expect(withoutSample(twins, 1).draft).toEqual({ ...twins, samples: [twins.samples[0]] });
});
