/** The equations an author wrote on a page, each with its place in the file. */
import { type MdastNode, mdxToMdast } from "satteri";
import type { ContentFault } from "../../authoring/faults.ts";
import { faultMaker, type PageFault } from "./page-fault.ts";

/** An equation as it stands in the source, without the remark behind it. */
export interface StatedEquation {
  text: string;
  /** Offset of its first character in the page, from 0. */
  offset: number;
  /** One in a fence is read by itself and must carry states; one in a sentence may go without. */
  where: "fence" | "sentence";
}

interface Found {
  equations: StatedEquation[];
  faults: ContentFault[];
}

type Of<Type extends MdastNode["type"]> = Extract<MdastNode, { type: Type }>;
type Tag = Of<"mdxJsxFlowElement"> | Of<"mdxJsxTextElement">;

/** Every `equation` fence and every `<Equation of="..." />` of a page, read with the parser that builds the site. */
export function findEquations(file: string, page: string): Found {
  const fault = faultMaker(file, page);
  const equations: StatedEquation[] = [];
  const faults: ContentFault[] = [];
  const take = (found: StatedEquation[] | PageFault): void => {
    if (Array.isArray(found)) equations.push(...found);
    else faults.push(fault(found));
  };
  const visit = (node: MdastNode): void => {
    if (node.type === "code") take(inFence(node, page));
    else if (isTag(node) && node.name === "Equation") take(inSentence(node, page));
    else if (isExpression(node) && node.value.includes("<Equation")) take(notChecked(startOf(node)));
    if ("children" in node) node.children.forEach(visit);
  };
  try {
    visit(mdxToMdast(page, { features: { frontmatter: true } }));
  } catch (error) {
    return { equations: [], faults: [fault(unreadable(error, page))] };
  }
  return { equations, faults };
}

function inFence(node: Of<"code">, page: string): StatedEquation[] | PageFault {
  const offset = startOf(node);
  if (!/^equations?$/i.test(node.lang ?? "")) return [];
  if (node.lang !== "equation") {
    return {
      offset: page.indexOf(node.lang as string, offset),
      what: "fence",
      stated: node.lang as string,
      found: "a word that is not known, so the fence would be printed as it stands",
      advice: "write equation after the backticks",
    };
  }
  // The fence's own first line, then its lines in order: each is looked for behind the one before.
  let at = page.indexOf("\n", offset);
  const equations = node.value.split("\n").flatMap((line): StatedEquation[] => {
    const text = line.replace(/(?:^|\s)#.*$/, "").trim();
    if (line.trim() === "") return [];
    const start = page.indexOf(line.trim(), at);
    at = start + line.trim().length;
    return [{ text, offset: start, where: "fence" }];
  });
  if (equations.length > 0) return equations;
  return {
    offset,
    what: "equation",
    found: "an empty fence",
    advice: "write one equation a line in it, or take it away",
  };
}

function inSentence(node: Tag, page: string): StatedEquation[] | PageFault {
  const offset = startOf(node);
  const given = node.attributes.find((each) => each.type === "mdxJsxAttribute" && each.name === "of")?.value;
  const text = typeof given === "string" ? given : /^(["'])([^"'\\]*)\1$/.exec(given?.value.trim() ?? "")?.[2];
  if (text === undefined) return notChecked(offset);
  // An entity such as &gt; stands differently in the source; then the tag itself is the place.
  const start = page.slice(0, node.position?.end.offset).indexOf(text, offset);
  return [{ text, offset: start < 0 ? offset : start, where: "sentence" }];
}

const notChecked = (offset: number): PageFault => ({
  offset,
  what: "equation",
  found: "an Equation without an equation written out in it, so nobody could check it",
  advice: 'write <Equation of="Ag+ + Cl- -> AgCl(s)" /> with the equation itself between the quotes, outside braces',
});

/** The parser begins its message with the place: "3:1: Expected a closing tag". */
function unreadable(error: unknown, page: string): PageFault {
  const message = error instanceof Error ? error.message : String(error);
  const [, line, column, words] = /^(?:(\d+):(\d+): )?([\s\S]*?)(?: \([\w:-]+\))?$/.exec(message) as RegExpExecArray;
  const before = page.split("\n").slice(0, Number(line ?? 1) - 1);
  const offset = before.reduce((sum, each) => sum + each.length + 1, 0) + Number(column ?? 1) - 1;
  return {
    offset,
    what: "the page is not MDX",
    found: words,
    advice: "check tags, braces and less-than signs at this place",
  };
}

const isTag = (node: MdastNode): node is Tag => node.type === "mdxJsxFlowElement" || node.type === "mdxJsxTextElement";

const isExpression = (node: MdastNode): node is Of<"mdxFlowExpression"> | Of<"mdxTextExpression"> =>
  node.type === "mdxFlowExpression" || node.type === "mdxTextExpression";

const startOf = (node: MdastNode): number => node.position?.start.offset ?? 0;
