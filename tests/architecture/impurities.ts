import ts from "typescript";
import type { SourceFiles } from "./source-files.ts";

/** Names that would tie a result to a clock, to chance, to a browser or to a host. */
const WORLD = new Map([
  ["Date", "the clock"],
  ["performance", "the clock"],
  ["setTimeout", "the clock"],
  ["setInterval", "the clock"],
  ["crypto", "chance"],
  ["document", "the page"],
  ["window", "the browser"],
  ["self", "the browser"],
  ["navigator", "the browser"],
  ["localStorage", "the browser"],
  ["globalThis", "the host"],
  ["process", "the host"],
  ["console", "the host"],
  ["fetch", "the network"],
]);

/** Sentences on every use of the outside world, each beginning with file:line. */
export function impurities(files: SourceFiles): string[] {
  return [...files].flatMap(([path, text]) => impuritiesOf(path, text));
}

function impuritiesOf(path: string, text: string): string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const own = declaredNames(source);
  const found: string[] = [];
  const report = (node: ts.Node, name: string, what: string): void => {
    const line = source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
    found.push(`${path}:${line}: uses ${name}. The engine is pure: pass in what it needs from ${what}.`);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node) && node.getText(source) === "Math.random") {
      report(node, "Math.random", "chance");
    } else if (ts.isIdentifier(node) && WORLD.has(node.text) && !own.has(node.text) && !isMemberName(node)) {
      report(node, node.text, WORLD.get(node.text) ?? "");
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** A file may call a variable of its own `process`; that is not the host's. */
function declaredNames(source: ts.SourceFile): Set<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    const isDeclaration =
      ts.isVariableDeclaration(node) ||
      ts.isParameter(node) ||
      ts.isBindingElement(node) ||
      ts.isFunctionDeclaration(node) ||
      ts.isImportSpecifier(node);
    if (isDeclaration && node.name !== undefined && ts.isIdentifier(node.name)) names.add(node.name.text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return names;
}

/** True where the name belongs to an object: `step.process`, `{ process: ... }`, `interface Step { process: ... }`. */
function isMemberName(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === node;
  if (ts.isBindingElement(parent)) return parent.propertyName === node;
  const named =
    ts.isPropertyAssignment(parent) ||
    ts.isPropertySignature(parent) ||
    ts.isPropertyDeclaration(parent) ||
    ts.isMethodDeclaration(parent) ||
    ts.isMethodSignature(parent);
  return named && parent.name === node;
}
