/** Bundles a file of ours and all it imports into one script, for places where a page's own modules cannot be loaded. */
import { resolve } from "node:path";
import { build } from "vite";

const ROOT = resolve(import.meta.dirname, "..");

/**
 * @param entry path from the root of the repository
 * @returns a classic script: nothing is exported, nothing more is loaded
 */
export async function bundled(entry: string): Promise<string> {
  const made = await build({
    configFile: false,
    root: ROOT,
    logLevel: "warn",
    build: {
      write: false,
      copyPublicDir: false,
      rolldownOptions: { input: resolve(ROOT, entry), output: { format: "iife", codeSplitting: false } },
    },
  });
  const outputs = (Array.isArray(made) ? made : [made]).flatMap((one) => ("output" in one ? one.output : []));
  const [script, ...more] = outputs.filter((one) => one.type === "chunk");
  if (script === undefined || more.length > 0) throw new Error(`${entry} did not become one script.`);
  return script.code;
}
