/** One question to the index: the pages that answer it, by kind, of each kind the best first. */
import { FACETS, PAGE_KINDS, type PageKind } from "./facets.ts";
import type { FoundPage, Hit, SearchIndex } from "./pagefind.ts";
import { holds, type Term, termsOf, wordingsOf } from "./terms.ts";

/** What the form holds. An empty text narrows nothing. */
export type Question = Readonly<Record<"q" | "kind" | (typeof FACETS)[number], string>>;

/** The pages of one kind. Their text is loaded when they are to be shown, and not before. */
export interface Group {
  kind: PageKind;
  /** Pages found, at most: the index may name some that only resemble the question. */
  count: number;
  /** The next pages, so many at most; fewer, or none, at the end. */
  next(many: number): Promise<FoundPage[]>;
}

export interface Answer {
  terms: Term[];
  groups: Group[];
}

export const isEmpty = (question: Question): boolean => Object.values(question).every((text) => text.trim() === "");

export async function ask(index: SearchIndex, question: Question): Promise<Answer> {
  const terms = termsOf(question.q);
  const chosen = Object.fromEntries(FACETS.flatMap((facet) => (question[facet] ? [[facet, question[facet]]] : [])));
  const kinds = PAGE_KINDS.filter((kind) => question.kind === "" || question.kind === kind);
  // A question of nothing but "the" finds nothing; no question at all, only narrowed, finds all that is left.
  const wordings = question.q.trim() === "" ? [null] : wordingsOf(terms);
  const groups: Group[] = [];
  for (const kind of kinds) {
    const hits = await hitsOf(index, wordings, { kind, ...chosen });
    if (hits.length > 0) groups.push(groupOf(kind, hits, terms));
  }
  return { terms, groups };
}

/** The hits of all wordings, each page once with its best score. */
async function hitsOf(index: SearchIndex, wordings: readonly (string | null)[], filters: Record<string, string>) {
  const best = new Map<string, Hit>();
  for (const wording of wordings) {
    const { results } = await index.search(wording, { filters });
    for (const hit of results) if (hit.score > (best.get(hit.id)?.score ?? -1)) best.set(hit.id, hit);
  }
  return [...best.values()].toSorted((a, b) => b.score - a.score);
}

function groupOf(kind: PageKind, hits: readonly Hit[], terms: readonly Term[]): Group {
  let at = 0;
  const group: Group = {
    kind,
    count: hits.length,
    async next(many) {
      const pages: FoundPage[] = [];
      while (pages.length < many && at < hits.length) {
        const some = hits.slice(at, at + many - pages.length);
        at += some.length;
        const loaded = await Promise.all(some.map((hit) => hit.data()));
        const real = loaded.filter(({ content, meta }) => holds(`${meta.title} ${content}`, terms));
        group.count -= loaded.length - real.length;
        pages.push(...real);
        // The best pages of a kind do not hold it: the index fell back to beginnings of words, and those after them do not either.
        if (real.length === 0 && pages.length === 0) {
          group.count = 0;
          return [];
        }
      }
      return pages;
    },
  };
  return group;
}
