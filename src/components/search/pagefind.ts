/** The part of the search index's interface that we use. */
export interface FoundPage {
  url: string;
  /** HTML: text with `mark` around what was found. */
  excerpt: string;
  /** The whole text of the page. */
  content: string;
  meta: Record<string, string>;
}

/** A page that answers, not loaded yet. */
export interface Hit {
  id: string;
  score: number;
  data(): Promise<FoundPage>;
}

export interface SearchIndex {
  options(options: { noWorker: boolean; excerptLength: number }): Promise<void>;
  init(): Promise<void>;
  /** @param query null asks for every page the filters leave */
  search(query: string | null, options: { filters: Record<string, string> }): Promise<{ results: Hit[] }>;
}

/** Words of an excerpt: three lines on a phone. */
const EXCERPT = 24;

let loading: Promise<SearchIndex> | undefined;

/**
 * Loads the index once, on first use. It works in the page: a worker would cost a second copy of its program, 12 kB, and a search takes a
 * few milliseconds.
 *
 * @param base root address of the site, with a slash at the end
 */
export function loadIndex(base: string): Promise<SearchIndex> {
  loading ??= import(/* @vite-ignore */ `${base}pagefind/pagefind.js`)
    .then(async (index: SearchIndex) => {
      await index.options({ noWorker: true, excerptLength: EXCERPT });
      await index.init();
      return index;
    })
    .catch((error: unknown) => {
      loading = undefined;
      throw error;
    });
  return loading;
}
