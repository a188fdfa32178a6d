/** Bundles a file of ours and all it imports into one script, for places where a page's own modules cannot be loaded. */
import { resolve } from "node:path";
import { build } from "vite";
import { LANGUAGE } from "#words/language.ts";
import { ROOT } from "./last-build.ts";
import { wordsOf } from "./words-of.ts";

/**
 * @param entry path from the root of the repository
 * @param base path the site is built for
 * @returns a classic script: nothing is exported, nothing more is loaded
 */
export async function bundled(entry: string, base = "/"): Promise<string> {
  const made = await build({
    configFile: false,
    root: ROOT,
    base,
    resolve: { alias: wordsOf(LANGUAGE) },
    logLevel: "warn",
    oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
    build: {
      write: false,
      copyPublicDir: false,
      modulePreload: false,
      rolldownOptions: {
        input: resolve(ROOT, entry),
        output: { format: "iife", codeSplitting: false },
        // What asks for the place of its own file belongs to loading more files, and there are none.
        checks: { emptyImportMeta: false },
      },
    },
  });
  const outputs = (Array.isArray(made) ? made : [made]).flatMap((one) => ("output" in one ? one.output : []));
  const [script, ...more] = outputs.filter((one) => one.type === "chunk");
  if (script === undefined || more.length > 0) throw new Error(`${entry} did not become one script.`);
  return script.code;
}
