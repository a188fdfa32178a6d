/** The part of the search index's interface that we use. */
export interface FoundPage {
  url: string;
  /** HTML: text with `mark` around what was found. */
  excerpt: string;
  /** The whole text of the page. */
  content: string;
  meta: Record<string, string>;
  filters: Record<string, string[]>;
}

export interface SearchIndex {
  init(): Promise<void>;
  search(
    query: string,
    options: { filters?: Record<string, string> },
  ): Promise<{ results: { data(): Promise<FoundPage> }[] }>;
}

let loading: Promise<SearchIndex> | undefined;

/**
 * Loads the index once, on first use.
 *
 * @param base root address of the site, with a slash at the end
 */
export function loadIndex(base: string): Promise<SearchIndex> {
  loading ??= import(/* @vite-ignore */ `${base}pagefind/pagefind.js`)
    .then(async (index: SearchIndex) => {
      await index.init();
      return index;
    })
    .catch((error: unknown) => {
      loading = undefined;
      throw error;
    });
  return loading;
}
