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

/** Astro's own style sheet, in each page with an island: `page.css` says the same once for all. */
const OF_ISLANDS = "<style>astro-island,astro-slot,astro-static-slot{display:contents}</style>";

/**
 * A built page without the marks for the search index and with a policy that allows the scripts and styles inside this page alone: Astro
 * lists those of the whole site in each. Scripts that follow each other are one, and what islands start from is quoted without escapes.
 */
export function finished(html: string): string {
  const joined = new Map<string, string>();
  const page = html
    .replace(OF_ISLANDS, "")
    .replace(/(?:<script>(?:(?!<\/script>)[\s\S])*<\/script>){2,}/g, (run) => {
      const scripts = run.slice("<script>".length, -"</script>".length).split("</script><script>");
      const all = scripts.join("\n");
      joined.set(scriptHash(scripts[0]), scriptHash(all));
      return `<script>${all}</script>`;
    })
    .replace(/<astro-island\b[^>]*>/g, (tag) =>
      tag.replace(/="([^"']*&quot;[^"']*)"/g, (_, value: string) => `='${value.replaceAll("&quot;", '"')}'`),
    )
    .replace(/<[a-z][^<>]* data-(?:pagefind|facets)[^<>]*>/g, (tag) =>
      tag.replace(/ data-(?:pagefind-[a-z]+|facets)(?:="[^"]*")?/g, ""),
    );
  const inside = new Set<string>(
    [...page.matchAll(/<(script|style)\b[^>]*>([\s\S]*?)<\/\1>/g)].map(([, , content]) => scriptHash(content)),
  );
  return page.replace(/(?<=<meta http-equiv="content-security-policy" content=")[^"]*/, (policy) =>
    policy.replace(/ '(sha256-[^']+)'/g, (_, listed: string) => {
      const hash = joined.get(listed) ?? listed;
      return inside.has(hash) ? ` '${hash}'` : "";
    }),
  );
}
