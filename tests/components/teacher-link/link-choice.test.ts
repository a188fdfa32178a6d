import { describe, expect, test } from "vitest";
import { heldFault, MARK_HELD } from "../../../src/components/teacher-link/held-back.ts";
import { type LinkChoice, linkFor, linkWords, startsOf } from "../../../src/components/teacher-link/link-choice.ts";

const WALKTHROUGH = "https://school.example/chemistry/practicals/lamp-room-shelf/";
const starts = startsOf([{ label: "b", title: "Aqueous ammonia" }]);
const usual: LinkChoice = { opens: "walkthrough", record: "filled", conclusion: "shown", anchor: "", seed: 7 };

test.each<[Partial<LinkChoice>, string, RegExp]>([
  [{}, "", /^The walkthrough opens at its head, with its record filled in; the conclusion is shown\.$/],
  [{ record: "empty" }, "?record=own", /with an empty record/],
  [{ conclusion: "asked" }, "?conclusion=asked", /stay hidden until the student asks/],
  [{ record: "empty", conclusion: "asked", anchor: "record" }, "?record=own&conclusion=asked#record", /“Record”/],
  [{ anchor: "part-b" }, "#part-b", /“Carry out, part b: Aqueous ammonia”/],
  [{ opens: "practice", conclusion: "asked" }, "practice/?seed=7", /the same unknowns, set 7/],
])("%o makes %s", (entry, end, words) => {
  const choice = { ...usual, ...entry };
  expect(linkFor(choice, WALKTHROUGH)).toBe(WALKTHROUGH + end);
  expect(linkWords(choice, starts)).toMatch(words);
});

describe("a conclusion held back", () => {
  /** What the line at the head of the page marks for an address that ends so. */
  const marked = (search: string) => {
    const document = { documentElement: { dataset: {} as Record<string, string> } };
    new Function("location", "document", MARK_HELD)({ search }, document);
    return document.documentElement.dataset;
  };

  test.each(["?conclusion=asked", "?record=own&conclusion=asked", "?conclusion=asked&R.a.i=not+done"])(
    "is marked by %s",
    (search) => {
      expect(marked(search)).toEqual({ conclusion: "asked" });
      expect(heldFault(search)).toBeUndefined();
    },
  );

  test.each(["?conclusion=maybe", "?record=own&conclusion=asked2", "?conclusion=", "?conclusion", "?conclusion&a=b"])(
    "is kept back by %s, which is spoilt, and that is said",
    (search) => {
      expect(marked(search)).toEqual({ conclusion: "asked" });
      expect(heldFault(search)).toMatch(/only asked is understood there/);
    },
  );

  test.each(["", "?record=own", "?inconclusion=asked", "?conclusions=asked"])("is not marked by “%s”", (search) => {
    expect(marked(search)).toEqual({});
  });

  test.each([
    ["?conclusion=", "conclusion: found “”; only asked is understood there."],
    [`?conclusion=${"x".repeat(99)}`, `conclusion: found “${"x".repeat(40)}…”; only asked is understood there.`],
    ["?record=own", undefined],
  ])("of %s is said what is wrong", (search, fault) => {
    expect(heldFault(search)).toBe(fault);
  });
});
