import { beforeEach, expect, test, vi } from "vitest";
import { changeKept, freeNumber, loadKept, NOTHING_KEPT, sameAs } from "../../../src/components/paper/kept-papers.ts";

/** What a browser's storage does of the Web Storage standard, as far as it is used. */
function storage(full = false) {
  const texts = new Map<string, string>();
  vi.stubGlobal("localStorage", {
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (full) throw new Error("QuotaExceededError");
      texts.set(key, text);
    },
  });
  return texts;
}

beforeEach(() => {
  storage();
  return () => vi.unstubAllGlobals();
});

const add = (title: string) => (now: { papers: Record<string, unknown> }) => {
  const id = freeNumber(now.papers);
  return { papers: { ...now.papers, [id]: { title } }, open: id };
};

test("a change is made to the list as it stands now, not as it was seen", () => {
  changeKept(NOTHING_KEPT, add("of one tab"));
  changeKept(NOTHING_KEPT, add("of another tab, which has not seen the first"));
  expect(loadKept().papers).toEqual({
    "1": { title: "of one tab" },
    "2": { title: "of another tab, which has not seen the first" },
  });
});

test("where nothing can be kept, the list goes on as this tab knows it, and the reader is told", () => {
  storage(true);
  const seen = { papers: { "1": { title: "seen" } }, open: "1" };
  vi.stubGlobal("localStorage", {
    getItem: () => {
      throw new Error("SecurityError");
    },
    setItem: () => {
      throw new Error("SecurityError");
    },
  });
  const kept = changeKept(seen, add("new"));
  expect(Object.keys(kept.papers)).toEqual(["1", "2"]);
  expect(kept.refused).toMatch(/does not keep anything/);
});

test("what cannot be read is put aside before a paper takes its place", () => {
  const texts = storage();
  texts.set("ionwright papers", "{broken");
  const kept = changeKept(NOTHING_KEPT, add("new"));
  expect(kept.papers).toEqual({ "1": { title: "new" } });
  expect([...texts.values()]).toContain("{broken");
});

test("a paper that is kept already is found again", () => {
  const papers = { 1: { title: "Two jars" }, 2: { title: "Three jars" } };
  expect(sameAs(papers, { title: "Three jars" })).toBe("2");
  expect(sameAs(papers, { title: "Four jars" })).toBeUndefined();
});
