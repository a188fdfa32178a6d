/** A fence of equations as chemistry on the page: the tokens of the grammar in, elements with subscripts and superscripts out. */
import type { ShikiTransformer, ThemedToken } from "shiki";
import { spokenEquation } from "../../engine/formula/spoken-equation.ts";
import { toHtml } from "../../engine/formula/typeset.ts";

type Root = Parameters<NonNullable<ShikiTransformer["root"]>>[0];
export type Block = Extract<Root["children"][number], { type: "element" }>;
type Content = Block["children"][number];

/** A stretch of a line that the grammar gave one scope. */
interface Piece {
  kind: Kind;
  text: string;
}

/** Scopes of the grammar by what stands there; `space` is what has none. */
const SCOPES = {
  "constant.numeric.coefficient.equation": "coefficient",
  "entity.name.type.formula.equation": "formula",
  "storage.modifier.state.equation": "state",
  "keyword.operator.plus.equation": "plus",
  "keyword.operator.arrow.equation": "arrow",
  "comment.line.number-sign.equation": "remark",
  "invalid.illegal.equation": "unreadable",
} as const;
type Kind = (typeof SCOPES)[keyof typeof SCOPES] | "space";

/** One paragraph a line; blank lines are left out. `lines` are tokens with their scope names. */
export function equationBlock(lines: readonly (readonly ThemedToken[])[]): Block {
  const paragraphs = lines.map(piecesOf).filter((pieces) => pieces.some(({ kind }) => kind !== "space"));
  return element("div", { class: "equations" }, paragraphs.map(paragraph));
}

function piecesOf(line: readonly ThemedToken[]): Piece[] {
  const pieces = line.flatMap(({ explanation = [] }) =>
    explanation.map(({ content, scopes }) => {
      const scope = scopes[scopes.length - 1].scopeName;
      return { text: content, kind: scope in SCOPES ? SCOPES[scope as keyof typeof SCOPES] : "space" } satisfies Piece;
    }),
  );
  return pieces;
}

function paragraph(pieces: readonly Piece[]): Content {
  const remark = pieces.find(({ kind }) => kind === "remark")?.text.replace(/^#\s*/, "");
  const chemistry = pieces.filter(({ kind }) => kind !== "remark");
  const said = spokenEquation(chemistry.map(({ text }) => text).join(""));
  // A role of its own, because a name for a plain span or paragraph would not be read.
  const math = element("span", { role: "math", ariaLabel: said }, spaced(termsOf(chemistry).map(typesetTerm)));
  const children = remark ? [math, text(" "), element("span", { class: "remark" }, [text(remark)])] : [math];
  return element("p", { class: "equation" }, children);
}

/** Pieces gathered to what must stay on one line: a coefficient with its formula and state, or a sign by itself. */
function termsOf(pieces: readonly Piece[]): Piece[][] {
  const terms: Piece[][] = [];
  let open = false;
  for (const piece of pieces) {
    const last = terms[terms.length - 1];
    if (piece.kind === "space") open &&= last?.[last.length - 1].kind === "coefficient";
    else {
      if (open) last.push(piece);
      else terms.push([piece]);
      open = piece.kind !== "plus" && piece.kind !== "arrow";
    }
  }
  return terms;
}

function typesetTerm(term: readonly Piece[]): Content {
  if (term[0].kind === "plus") return text("+");
  if (term[0].kind === "arrow") return element("span", { class: "arrow" }, [text("→")]);
  return element("span", { class: "f" }, term.flatMap(typesetPiece));
}

function typesetPiece({ kind, text: written }: Piece): Content[] {
  if (kind === "coefficient") return [element("span", { class: "coefficient" }, [text(written)]), text(" ")];
  if (kind === "formula") return fromHtml(toHtml(written));
  return [element("span", { class: kind }, kind === "state" ? fromHtml(toHtml(written)) : [text(written)])];
}

/** The elements in typeset HTML, which holds nothing but `<sub>`, `<sup>` and numeric entities. */
function fromHtml(html: string): Content[] {
  return [...html.matchAll(/<(su[bp])>([^<]*)<\/\1>|[^<]+/g)].map(([all, tag, inside]) =>
    tag === undefined ? text(withoutEntities(all)) : element(tag, {}, [text(withoutEntities(inside))]),
  );
}

const withoutEntities = (html: string): string =>
  html.replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)));

const spaced = (words: readonly Content[]): Content[] =>
  words.flatMap((word, index) => (index === 0 ? [word] : [text(" "), word]));

const text = (value: string): Content => ({ type: "text", value });

const element = (tagName: string, properties: Block["properties"], children: Content[]): Block => ({
  type: "element",
  tagName,
  properties,
  children,
});
