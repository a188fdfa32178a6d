/**
 * On which page of a PDF each named place stands. Reads what Chromium writes: the tree of pages and the names of places stand there as plain
 * objects (ISO 32000-1, sections 7.7.3.2 "Page tree nodes" and 12.3.2.3 "Named destinations", the dictionary `Dests` of the catalogue).
 */

/** The text of each object, by its number. */
function objectsOf(pdf: string): Map<string, string> {
  return new Map(
    [...pdf.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)].map(([, number, text]) => [number, text]),
  );
}

/** Object numbers of all pages, in order. */
function pagesOf(objects: ReadonlyMap<string, string>, node: string): string[] {
  const text = objects.get(node) ?? "";
  if (!/\/Type \/Pages\b/.test(text)) return [node];
  const kids = text.match(/\/Kids \[([^\]]*)\]/)?.[1] ?? "";
  return [...kids.matchAll(/(\d+) 0 R/g)].flatMap(([, kid]) => pagesOf(objects, kid));
}

/**
 * @returns page numbers from 1, by name
 * @throws Error when the file is not laid out as expected
 */
export function pageNumbers(file: Buffer): Map<string, number> {
  const objects = objectsOf(file.toString("latin1"));
  const catalogue = [...objects.values()].find((text) => /\/Type \/Catalog\b/.test(text)) ?? "";
  const root = catalogue.match(/\/Pages (\d+) 0 R/)?.[1];
  const named = objects.get(catalogue.match(/\/Dests (\d+) 0 R/)?.[1] ?? "");
  if (root === undefined || named === undefined) throw new Error("The PDF names no pages or no places.");
  const pages = pagesOf(objects, root);
  const places = [...named.matchAll(/\/(\S+) \[(\d+) 0 R\b/g)];
  return new Map(places.map(([, name, page]) => [unescaped(name), pages.indexOf(page) + 1]));
}

/** A name writes what is no plain letter as "#" and two figures (section 7.3.5). */
const unescaped = (name: string): string =>
  name.replace(/#([0-9A-Fa-f]{2})/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
