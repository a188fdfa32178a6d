import { posix } from "node:path";
import ts from "typescript";

/** One import, re-export or dynamic import of a file. */
export interface Arrow {
  /** 1-based. */
  line: number;
  /** As written. */
  specifier: string;
  /** Path from the root of the repository for a relative specifier, else the package's name as written. */
  target: string;
  /** Only types cross: nothing of the target runs. */
  typeOnly: boolean;
}

/** Reads what a TypeScript, Astro or MDX file imports, in order of appearance. */
export function importsOf(path: string, text: string): Arrow[] {
  const code = codeOf(path, text);
  const source = ts.createSourceFile(path, code, ts.ScriptTarget.Latest, true, scriptKind(path));
  const arrows: Arrow[] = [];
  const add = (node: ts.Node, specifier: ts.Node | undefined, typeOnly: boolean): void => {
    if (specifier === undefined || !ts.isStringLiteralLike(specifier)) return;
    const line = source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
    arrows.push({ line, specifier: specifier.text, target: resolveFrom(path, specifier.text), typeOnly });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) add(node, node.moduleSpecifier, importsTypesOnly(node.importClause));
    else if (ts.isExportDeclaration(node)) add(node, node.moduleSpecifier, node.isTypeOnly);
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) add(node, node.argument.literal, true);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      add(node, node.arguments[0], false);
    } else if (ts.isNewExpression(node) && node.expression.getText(source) === "URL") {
      // How a worker names its file: new URL('./x.ts', import.meta.url)
      if (node.arguments?.[1]?.getText(source) === "import.meta.url") add(node, node.arguments[0], false);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return arrows;
}

function importsTypesOnly(clause: ts.ImportClause | undefined): boolean {
  if (clause === undefined) return false;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const named = clause.namedBindings;
  if (clause.name !== undefined || named === undefined || !ts.isNamedImports(named)) return false;
  return named.elements.length > 0 && named.elements.every((element) => element.isTypeOnly);
}

function scriptKind(path: string): ts.ScriptKind {
  return path.endsWith(".tsx") || path.endsWith(".astro") ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
}

/** The script parts of a file; everything else is blanked, so that line numbers stay true. */
function codeOf(path: string, text: string): string {
  if (path.endsWith(".astro")) {
    return keepOnly(text, /(?<![\s\S])---\r?\n([\s\S]*?)^---/gm, /<script(?:\s[^>]*)?>([\s\S]*?)<\/script>/g);
  }
  if (path.endsWith(".mdx")) return keepOnly(text, /^(import\s[^\n]*|export\s[^\n]*from[^\n]*)$/gm);
  return text;
}

function keepOnly(text: string, ...patterns: RegExp[]): string {
  const kept = text.replace(/[^\n]/g, " ").split("");
  for (const pattern of patterns) {
    for (const match of text.matchAll(pattern)) {
      const inner = match[1];
      const from = match.index + match[0].indexOf(inner);
      for (let at = from; at < from + inner.length; at += 1) kept[at] = text[at];
    }
  }
  return kept.join("");
}

function resolveFrom(path: string, specifier: string): string {
  return specifier.startsWith(".") ? posix.join(posix.dirname(path), specifier) : specifier;
}
