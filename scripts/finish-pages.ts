/** Takes out of each built page what only the build itself needed: it would be loaded again on every visit. */
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { scriptHash } from "../src/build/hosting/script-hash.ts";

/** Finishes every page of a built site, once the search index has read it. */
export async function finishPages(dist: string): Promise<void> {
  for (const file of await readdir(dist, { recursive: true })) {
    if (!file.endsWith(".html")) continue;
    const path = join(dist, file);
    await writeFile(path, finished(await readFile(path, "utf8")));
  }
}

/**
 * A built page without the marks for the search index and with a policy that allows the scripts and styles inside this page alone: Astro
 * lists those of the whole site in each.
 */
export function finished(html: string): string {
  const inside = [...html.matchAll(/<(script|style)\b[^>]*>([\s\S]*?)<\/\1>/g)].map(([, , content]) =>
    scriptHash(content),
  );
  return html
    .replace(/(?<=<meta http-equiv="content-security-policy" content=")[^"]*/, (policy) =>
      policy.replace(/ '(sha256-[^']+)'/g, (source, hash: string) =>
        inside.some((one) => one === hash) ? source : "",
      ),
    )
    .replace(/<[a-z][^<>]* data-(?:pagefind|facets)[^<>]*>/g, (tag) =>
      tag.replace(/ data-(?:pagefind-[a-z]+|facets)(?:="[^"]*")?/g, ""),
    );
}
