/** A piece of an excerpt: plain text, found or not. */
export interface Piece {
  text: string;
  found: boolean;
}

const ENTITIES: Record<string, string> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  "#39": "'",
  "#x27": "'",
  nbsp: "\u00a0",
};

const decode = (html: string) =>
  html.replace(/<[^>]*>/g, "").replace(/&(\w+|#x?\w+);/g, (whole, name: string) => ENTITIES[name] ?? whole);

/**
 * Takes an excerpt apart into text, so that it is never put into the page as HTML: only `mark` is understood, other tags are dropped.
 *
 * @example piecesOf("a <mark>white</mark> solid") // "a ", "white" (found), " solid"
 */
export function piecesOf(excerpt: string): Piece[] {
  return excerpt
    .split(/<mark>([\s\S]*?)<\/mark>/)
    .map((html, index) => ({ text: decode(html), found: index % 2 === 1 }))
    .filter((piece) => piece.text !== "");
}
