/**
 * Writes the tables of the constants column by column where a worker loads them: the name of an entry once instead of in every row. A tenth
 * fewer letters to read, and what stands in a column is alike and presses together better.
 */
import type { Plugin } from "vite";
import { CONSTANTS, childrenOf, type Node } from "./syntax-node.ts";

/** Fewer rows than this are not worth a table. */
const LEAST_ROWS = 3;

/** What puts the rows together again. An entry a row does not have is a hole in its column. */
const ROWS_OF = "virtual:rows-of";
const rowsOf = `export const rowsOf = (length, columns) =>
  Array.from({ length }, (_, at) => {
    const row = {};
    for (const name in columns) if (at in columns[name]) row[name] = columns[name][at];
    return row;
  });`;

/** An entry with a plain name; spread and reckoned ones stay as they are. */
interface Entry extends Node {
  key: Node;
  value: Node;
}

const isEntry = (node: Node): node is Entry =>
  node.type === "Property" && node.kind === "init" && node.computed === false && node.method === false;

const isRow = (node: Node): boolean => node.type === "ObjectExpression" && childrenOf(node).every(isEntry);

/** The tables below a node, none within another. */
function tablesIn(node: Node): Node[] {
  const rows = childrenOf(node);
  const isTable =
    node.type === "ArrayExpression" &&
    rows.length >= LEAST_ROWS &&
    rows.length === (node.elements as unknown[]).length &&
    rows.every(isRow);
  if (isTable) return [node];
  return rows.flatMap(tablesIn);
}

/** A column of nothing but plain text; else undefined. */
function textColumn(column: readonly string[]): string | undefined {
  const texts = column.map((value) => /^"([^"\\|]+)"$/.exec(value)?.[1]);
  return texts.every((text) => text !== undefined) ? `"${texts.join("|")}".split("|")` : undefined;
}

/** @param text what the places of the nodes count in */
function inColumns(table: Node, text: string): string {
  const rows = childrenOf(table);
  const columns = new Map<string, string[]>();
  const textOf = ({ start, end }: Node) => text.slice(start, end);
  for (const [at, row] of rows.entries()) {
    for (const { key, value } of childrenOf(row).filter(isEntry)) {
      const column = columns.get(textOf(key)) ?? rows.map(() => "");
      column[at] = textOf(value);
      columns.set(textOf(key), column);
    }
  }
  // A comma behind each: without it a hole at the end would be none.
  const written = [...columns].map(
    ([name, column]) => `${name}: ${textColumn(column) ?? `[${column.map((value) => `${value},`).join("")}]`}`,
  );
  return `rowsOf(${rows.length}, { ${written.join(", ")} })`;
}

export const asColumns = (): Plugin => ({
  name: "as-columns",
  // While TypeScript is still what it was written as.
  enforce: "pre",
  resolveId: (id) => (id === ROWS_OF ? `\0${ROWS_OF}` : undefined),
  load: (id) => (id === `\0${ROWS_OF}` ? rowsOf : undefined),
  transform(text, id) {
    if (!CONSTANTS.test(id)) return undefined;
    const tables = tablesIn(this.parse(text, { lang: "ts" }) as unknown as Node);
    if (tables.length === 0) return undefined;
    const parts = tables.map((table, n) => text.slice(tables[n - 1]?.end ?? 0, table.start) + inColumns(table, text));
    const code = `import { rowsOf } from "${ROWS_OF}";\n${parts.join("")}${text.slice(tables.at(-1)?.end)}`;
    return { code, map: null };
  },
});
