/** Words that stand in a template, where only those of one language can. */
import ts from "typescript";

/** Attributes that are read out or shown. */
const SAID = /^(?:aria-label|aria-description|title|placeholder|alt|data-head)$/;
const LETTERS = /\p{L}{2,}/u;

/** Units and signs are the same in every language. */
const SAME = /^(?:cm³|dm³|mol\/dm³|mm|min|pH|g|s|[\s\d.,:;·×%()/…–-])+$/;

/** Texts and spoken attributes of a `.tsx` or `.astro` file, in order. */
export function wordsIn(path: string, text: string): string[] {
  const source = ts.createSourceFile(
    "template.tsx",
    codeOf(path, text),
    ts.ScriptTarget.Latest,
    true,
    ts.ScriptKind.TSX,
  );
  const found: string[] = [];
  const add = (words: string) => {
    const plain = words.replace(/\s+/g, " ").trim();
    if (LETTERS.test(plain) && !SAME.test(plain)) found.push(plain);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isJsxText(node)) add(node.text);
    if (ts.isJsxAttribute(node) && SAID.test(node.name.getText(source)) && node.initializer)
      add(saidIn(node.initializer));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** The words of an attribute: of a text, or of a template between its values. */
function saidIn(of: ts.Node): string {
  if (ts.isStringLiteralLike(of)) return of.text;
  if (ts.isTemplateExpression(of))
    return [of.head, ...of.templateSpans.map(({ literal }) => literal)].map(({ text }) => text).join(" ");
  return ts.isJsxExpression(of) && of.expression ? saidIn(of.expression) : "";
}

/** The template of an Astro file, as the JSX it nearly is. */
function codeOf(path: string, text: string): string {
  if (!path.endsWith(".astro")) return text;
  const template = text
    .replace(/^---\r?\n[\s\S]*?^---/m, "")
    .replace(/<!doctype html>/i, "")
    .replace(/<(script|style)\b[^>]*>[\s\S]*?<\/\1>/g, "");
  return `<>${template}</>`;
}
