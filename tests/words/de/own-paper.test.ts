/** A paper of one's own in German: figures with a decimal comma in the fields, with a point in what is kept and shared. */
import { describe, expect, test } from "vitest";
import { type Draft, emptyDraft, emptyPart, emptySample, written } from "../../../src/components/paper/draft.ts";
import { draftOf } from "../../../src/components/paper/draft-of.ts";
import { inFewWords } from "../../../src/components/paper/in-few-words.ts";
import { askOf } from "../../../src/components/paper/step-kinds.ts";
import { readPaper } from "../../../src/engine/practical/faults.ts";

const bottles = [["NaOH(aq)", "Natronlauge"]] as const;
const draft: Draft = {
  ...emptyDraft(),
  samples: [{ ...emptySample("P"), concentration: "0,25 mol/dm3" }],
  parts: [
    { ...emptyPart("a"), tests: [{ says: "", steps: [{ take: "1,5 cm3" }, { add: "NaOH(aq)", drops: 5 }], seen: {} }] },
  ],
};

test("amounts typed with a comma are written with a point, and come back with a comma", () => {
  const paper = written(draft);
  expect(paper).toMatchObject({
    samples: [{ concentration: "0.25 mol/dm3" }],
    parts: [{ title: "Teil a", tests: [{ steps: [{ take: "1.5 cm3" }, { add: "NaOH(aq)", drops: 5 }] }] }],
  });
  expect("paper" in readPaper(paper)).toBe(true);
  const { draft: again, leftOut } = draftOf(paper);
  expect(leftOut).toEqual([]);
  expect(again.samples).toEqual(draft.samples);
  expect(again.parts[0].tests).toEqual(draft.parts[0].tests);
});

test("what fits no field is named in German", () => {
  expect(draftOf({ parts: [{ label: "a", tests: "viele" }] }).leftOut).toEqual([
    "Teil 1, tests: erwartet wird eine Liste; das wurde weggelassen.",
  ]);
});

describe("a step in a few words", () => {
  test.each([
    [{ add: "NaOH(aq)", drops: 5, at: "0,1 mol/dm3" }, "5 Tropfen Natronlauge (0,1 mol/dm3) zugeben"],
    [{ add: "NaOH(aq)", until: "in excess" }, "Natronlauge im Überschuss zugeben"],
    [{ filter: "residue" }, "filtrieren, den Rückstand aufheben"],
    [{ testGas: "damp red litmus" }, "das Gas prüfen: feuchtes rotes Lackmuspapier"],
    [{ warm: true }, "vorsichtig erwärmen"],
    [{ flame: true }, "Flammenfärbung"],
  ])("%j", (step, words) => {
    expect(inFewWords(step, bottles)).toBe(words);
  });
  test("what is missing is asked", () => {
    expect(askOf({ add: "NaOH(aq)" }, bottles)).toBe(
      "Wie viel Natronlauge? Wähle Tropfen, ein Volumen oder im Überschuss.",
    );
  });
});
