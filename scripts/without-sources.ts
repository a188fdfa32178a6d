/**
 * Takes out of what a worker loads the entries of the constants that only people who judge them need: where each comes from, what else was
 * published, why it was chosen. A quarter of what a reader on a slow network would wait for, and no worker shows it.
 */
import type { Plugin } from "vite";
import { CONSTANTS, childrenOf, type Node } from "./syntax-node.ts";

/** Entries that nothing a worker runs may read; `tests/scripts/without-sources.test.ts` holds both workers to that. */
const ENTRIES = new Set([
  "source",
  "sources",
  "dHSource",
  "logKVerified",
  "memory",
  "alternatives",
  "status",
  "confirm",
  "colourNote",
  "why",
  "note",
  "notes",
  "emission",
  "hazardCodes",
]);

/** Those of one file alone: elsewhere an entry of that name is told to readers. */
const ENTRIES_OF: readonly (readonly [file: RegExp, names: readonly string[]])[] = [
  [/[\\/]salts\.ts$/, ["name", "hazard", "waste", "concentration"]],
  [/[\\/](?:heating|kinetic-gates|later-looks|starch)\.ts$/, ["name"]],
  [/[\\/]flame-colours\.ts$/, ["alsoAccept"]],
  [/[\\/](?!class-practice)[\w-]+\.ts$/, ["unit"]],
];

/** Places of the entries of these names, none within another. */
function entriesIn(node: Node, names: ReadonlySet<string>): Node[] {
  if (node.type === "Property" && names.has((node.key as { name?: string }).name ?? "")) return [node];
  return childrenOf(node).flatMap((child) => entriesIn(child, names));
}

/** The text without the nodes, and without the comma after each. */
function without(text: string, nodes: readonly Node[]): string {
  const last = nodes.at(-1);
  if (!last) return text;
  const kept = nodes.map(({ start }, index) => text.slice(index === 0 ? 0 : nodes[index - 1].end, start));
  return [...kept, text.slice(last.end)]
    .map((piece, index) => (index === 0 ? piece : piece.replace(/^\s*,/, "")))
    .join("");
}

export const withoutSources = (): Plugin => ({
  name: "without-sources",
  // While TypeScript is still what it was written as: the properties of a type are no entries.
  enforce: "pre",
  transform(text, id) {
    if (!CONSTANTS.test(id)) return undefined;
    const names = new Set([...ENTRIES, ...ENTRIES_OF.flatMap(([file, names]) => (file.test(id) ? names : []))]);
    const nodes = entriesIn(this.parse(text, { lang: "ts" }) as unknown as Node, names);
    return { code: without(text, nodes), map: null };
  },
});
