/**
 * What runs before a file is loaded later on: it asks for all that the file imports at once, so that none waits for another. The bundler's own
 * helper also waits for style sheets and tells the page of failures, a kilobyte in every first visit; here no script brings a style sheet, and
 * an import that fails says so itself.
 */
import type { Plugin } from "vite";

/** The bundler's own name for the module, and for what is called in it. */
const HELPER = "\0vite/preload-helper.js";

const helper = (base: string): string => `export const __vitePreload = (load, files = []) => {
  for (const file of files)
    document.head.append(Object.assign(document.createElement("link"), { rel: "modulepreload", href: ${JSON.stringify(base)} + file }));
  return load();
};`;

/** The list of files that stands at the head of a script which loads some later. */
const ASKS_FOR_STYLES = /__vite__mapDeps=[^\n]*\.css"/;

/** A worker has no page to ask through, and what it loads later on imports next to nothing. */
const inWorker = "export const __vitePreload = (load) => load();";

export const fetchAhead = (of: "page" | "worker"): Plugin => ({
  name: "fetch-ahead",
  apply: "build",
  enforce: "pre",
  load(id) {
    if (id !== HELPER) return undefined;
    return of === "worker" ? inWorker : helper(this.environment.config.base);
  },
  generateBundle: {
    order: "post",
    handler(_, files) {
      for (const file of Object.values(files)) {
        if (file.type === "chunk" && ASKS_FOR_STYLES.test(file.code))
          this.error(
            `${file.fileName} loads a style sheet later on, which nothing waits for: import the sheet in the page (scripts/fetch-ahead.ts).`,
          );
      }
    },
  },
});
