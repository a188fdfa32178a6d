import { expect, test } from "vitest";
import { ask, type Question } from "../../../src/components/search/ask.ts";
import type { FoundPage, SearchIndex } from "../../../src/components/search/pagefind.ts";

const question = (part: Partial<Question>): Question => ({
  q: "",
  kind: "",
  ion: "",
  gas: "",
  reagent: "",
  hazard: "",
  ...part,
});

/** An index of given pages that answers every question with all of one kind, as the real one does with a word it does not know. */
function indexOf(pages: Record<string, { title: string; content: string }[]>) {
  const asked: { query: string | null; filters: Record<string, string> }[] = [];
  const loaded: string[] = [];
  const index: SearchIndex = {
    options: async () => {},
    init: async () => {},
    search: async (query, { filters }) => {
      asked.push({ query, filters });
      const own = pages[filters.kind] ?? [];
      return {
        results: own.map(({ title, content }, at) => ({
          id: title,
          score: query === "SO₄" ? at : -at / 100,
          data: async (): Promise<FoundPage> => {
            loaded.push(title);
            return { url: `/${title}/`, excerpt: content, content, meta: { title } };
          },
        })),
      };
    },
  };
  return { index, asked, loaded };
}

const sulfate = (title: string) => ({ title, content: "holds sulfate, pale" });

test("pages are grouped by kind and loaded only when they are to be shown", async () => {
  const { index, loaded } = indexOf({ caution: [sulfate("c")], practical: ["a", "b", "d", "e"].map(sulfate) });
  const { groups } = await ask(index, question({ q: "pale" }));
  expect(groups.map(({ kind, count }) => [kind, count])).toEqual([
    ["practical", 4],
    ["caution", 1],
  ]);
  expect(loaded).toEqual([]);
  expect((await groups[0].next(3)).map(({ meta }) => meta.title)).toEqual(["a", "b", "d"]);
  expect((await groups[0].next(3)).map(({ meta }) => meta.title)).toEqual(["e"]);
  expect(await groups[0].next(3)).toEqual([]);
  expect(loaded).toEqual(["a", "b", "d", "e"]);
});

test("a page found under two wordings comes once, at its better place", async () => {
  const { index, asked } = indexOf({ practical: [sulfate("a"), sulfate("b")] });
  const { groups } = await ask(index, question({ q: "SO4", kind: "practical" }));
  expect(asked.map(({ query }) => query)).toEqual(["sulfate", "SO₄"]);
  expect((await groups[0].next(3)).map(({ meta }) => meta.title)).toEqual(["b", "a"]);
});

test("pages that only resemble the question are left out, and not all of them are loaded to know it", async () => {
  const { index, loaded } = indexOf({
    practical: Array.from({ length: 50 }, (_, at) => ({ title: `p${at}`, content: "as" })),
  });
  const { groups } = await ask(index, question({ q: "asdf" }));
  expect(await groups[0].next(3)).toEqual([]);
  expect(groups[0].count).toBe(0);
  expect(loaded.length).toBe(3);
});

test("choices alone ask for every page they leave; a question of nothing but fillers finds none", async () => {
  const { index, asked } = indexOf({ practical: [sulfate("a")] });
  await ask(index, question({ kind: "practical", gas: "CO2" }));
  expect(asked).toEqual([{ query: null, filters: { kind: "practical", gas: "CO2" } }]);
  expect((await ask(index, question({ q: "the" }))).groups).toEqual([]);
});
