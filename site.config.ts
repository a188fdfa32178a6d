import mdx from "@astrojs/mdx";
import preact from "@astrojs/preact";
import sitemap from "@astrojs/sitemap";
import { defineConfig } from "astro/config";
import { LANGUAGE } from "#words/language.ts";
import { asColumns } from "./scripts/as-columns.ts";
import { entriesShareFiles, modulesShareFiles, PURE_ROOMS } from "./scripts/code-files.ts";
import { fetchAhead } from "./scripts/fetch-ahead.ts";
import { siteAddress } from "./scripts/site-address.ts";
import { withoutSources } from "./scripts/without-sources.ts";
import { wordsOf } from "./scripts/words-of.ts";
import { useCache } from "./src/build/cache/cache.ts";
import { department, useDepartment } from "./src/build/department/department.ts";
import { departmentPlugin } from "./src/build/department/vite-plugin.ts";
import { FENCES } from "./src/build/equations/fences.ts";
import { faultsInDev } from "./src/build/faults-in-dev.ts";
import { FRAMED_FOLDER } from "./src/components/framed/framed-pages.ts";

// A build has chosen already; this is for the server that shows pages while they are written.
if (process.env.IONWRIGHT_CACHE_OF === undefined) useCache(import.meta.dirname);
useDepartment(import.meta.dirname);

const { base, site } = siteAddress(process.env, department());

/** What holds JSX. Without this the plugin also takes every other file of ours apart and writes it anew, a quarter of a build's time. */
const JSX_FILES = ["**/*.tsx"];

export default defineConfig({
  base,
  ...(site === undefined ? {} : { site }),
  output: "static",
  // Folders with an index page need no rewriting rules, so any plain static host serves them.
  trailingSlash: "always",
  build: { format: "directory", inlineStylesheets: "never" },
  prefetch: false,
  devToolbar: { enabled: false },
  // Apostrophes stay as they are written: templates and the engine write straight ones.
  integrations: [
    mdx({ ...FENCES, smartypants: false }),
    preact({ include: JSX_FILES }),
    faultsInDev(import.meta.dirname),
    // A sitemap holds whole addresses, so it takes a host that is known. Pages for frames are not for search engines.
    ...(site === undefined ? [] : [sitemap({ filter: (page) => !page.startsWith(`${site}${base}${FRAMED_FOLDER}/`) })]),
  ],
  markdown: { syntaxHighlight: false },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data:",
        "object-src 'none'",
        "base-uri 'self'",
        "form-action 'self'",
        "connect-src 'self'",
      ],
      // The search index is read by a WebAssembly module.
      scriptDirective: { resources: ["'self'", "'wasm-unsafe-eval'"] },
      styleDirective: { resources: ["'self'"] },
    },
  },
  vite: {
    resolve: { alias: wordsOf(LANGUAGE) },
    plugins: [entriesShareFiles, modulesShareFiles, fetchAhead("page"), departmentPlugin()],
    // The engine's worker loads its rooms as modules.
    worker: {
      format: "es",
      plugins: () => [withoutSources(), asColumns(), entriesShareFiles, fetchAhead("worker")],
      // Marks for the bundler have done their work when a worker is written.
      rolldownOptions: { treeshake: PURE_ROOMS, output: { comments: { annotation: false } } },
    },
    build: { rolldownOptions: { treeshake: PURE_ROOMS, checks: { moduleLevelDirective: false } } },
  },
});
