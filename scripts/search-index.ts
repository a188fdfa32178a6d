/** Writes the search index of a built site, `<dist>/pagefind`. */
import { readdir, readFile, rm } from "node:fs/promises";
import { join, sep } from "node:path";
import { readFacets } from "../src/components/search/facets.ts";

/** So many pages are read and handed over at a time: enough to keep the indexer busy, few enough to stay small. */
const AT_ONCE = 16;

/**
 * Words' places in one file of the index. The indexer's own figure, 20000, makes files of 25 kB, and a question of two words loads two of
 * them; these have some 4 kB. The setting has no stable name yet: the exact version of the package keeps it, and the budget of a first search
 * is tested.
 */
const PLACES_IN_A_FILE = 3000;

/**
 * Indexes every page that asks for it (`data-pagefind-body`).
 * @returns number of pages indexed
 * @throws Error with the indexer's complaints
 */
export async function writeSearchIndex(dist: string): Promise<number> {
  process.env.PAGEFIND_UNSTABLE_INDEX_CHUNK_SIZE = String(PLACES_IN_A_FILE);
  const pagefind = await import("pagefind");
  try {
    const { index, errors } = await pagefind.createIndex();
    if (index === undefined) throw new Error(`The search index could not be started: ${errors.join("; ")}`);
    const files = (await readdir(dist, { recursive: true })).filter((file) => file.endsWith(".html")).toSorted();
    const complaints: string[] = [];
    let indexed = 0;
    for (let at = 0; at < files.length; at += AT_ONCE) {
      const pages = files.slice(at, at + AT_ONCE).map(async (file) => {
        const content = indexable(await readFile(join(dist, file), "utf8"));
        if (content === undefined) return;
        indexed += 1;
        const added = await index.addHTMLFile({ sourcePath: file.split(sep).join("/"), content });
        complaints.push(...added.errors);
      });
      await Promise.all(pages);
    }
    const written = await index.writeFiles({ outputPath: join(dist, "pagefind") });
    complaints.push(...written.errors);
    if (complaints.length > 0) throw new Error(`The search index could not be written: ${complaints.join("; ")}`);
    await removeUnused(join(dist, "pagefind"));
    return indexed;
  } finally {
    await pagefind.close();
  }
}

/** Pagefind adds search boxes of its own and a worker beside the index; the site has its own form and does without the worker. */
async function removeUnused(folder: string): Promise<void> {
  const names = await readdir(folder);
  const unused = names.filter((name) =>
    /^pagefind-(?:ui|modular-ui|component-ui|highlight|worker)\.|^wasm\.unknown\./.test(name),
  );
  await Promise.all(unused.map((name) => rm(join(folder, name))));
}

const SUBSCRIPTS = "₀₁₂₃₄₅₆₇₈₉";
const SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

const lowered = (text: string) => text.replace(/\d/g, (digit) => SUBSCRIPTS[Number(digit)]);
const raised = (text: string) =>
  text.replace(/[\d+\u2212-]/g, (sign) => (sign === "+" ? "⁺" : /\d/.test(sign) ? SUPERSCRIPTS[Number(sign)] : "⁻"));

/**
 * A built page as the indexer should read it, or undefined when the page is not for the index. Formulas become words of their own,
 * `SO₄²⁻`, so that they can be found and read in an excerpt; heads of tables go, for they say nothing without their columns; the head of a
 * row, what stands small beside a heading and one entry of a list are parted from what follows; facets become filters.
 */
export function indexable(html: string): string | undefined {
  if (!/<main\b[^>]*\sdata-pagefind-body/.test(html)) return undefined;
  const facets = /<main\b[^>]*\sdata-facets="([^"]*)"/.exec(html)?.[1];
  const filters = (facets === undefined ? [] : readFacets(facets)).map(
    (pair) => `<meta data-pagefind-filter="${pair.join(":")}">`,
  );
  return html
    .replace("</head>", `${filters.join("")}</head>`)
    .replace(/<sub>(\d+)<\/sub>/g, (_, text: string) => lowered(text))
    .replace(/<sup>([\d+\u2212-]+)<\/sup>/g, (_, text: string) => raised(text))
    .replace(/<thead\b[\s\S]*?<\/thead>/g, "")
    .replace(/<\/th>/g, ": </th>")
    .replace(/(<h2\b[^>]*>[^<]*?)\s*<small>/g, "$1: <small>")
    .replace(/([^<>.;:?!\s])((?:\s*<\/\w+>)*)<\/li>/g, "$1;$2</li>");
}
