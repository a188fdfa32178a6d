/** Links and components of an authored page: what leads nowhere or names nothing, each at its place in the file. */
import { type MdastNode, mdxToMdast } from "satteri";
import type { ContentFault } from "../../authoring/faults.ts";
import { faultMaker, type PageFault } from "../equations/page-fault.ts";
import type { Addresses } from "./addresses.ts";
import { COMPONENTS, type Named } from "./components.ts";

/** What of the site and the course a page may refer to. */
export interface Surroundings {
  addresses: Addresses;
  named: Named;
}

type Of<Type extends MdastNode["type"]> = Extract<MdastNode, { type: Type }>;
type Tag = Of<"mdxJsxFlowElement"> | Of<"mdxJsxTextElement">;

/** The policy of the site blocks what these bring along. */
const BLOCKED = ["script", "style", "iframe", "object", "embed"];
/** Of other sites; anything else, such as javascript:, is no link of ours. */
const ELSEWHERE = /^(?:https?|mailto|tel):/i;

/** All faults in the links and components of a page, in the order of the page. One that is no MDX is reported with its equations. */
export function checkMarkup(file: string, page: string, around: Surroundings): ContentFault[] {
  const faults: PageFault[] = [];
  const source = (node: MdastNode) => page.slice(startOf(node), node.position?.end.offset ?? page.length);
  /** Place of a piece of text in the node's own source; the node's where it stands differently there. */
  const within = (node: MdastNode, text: string) => startOf(node) + Math.max(0, source(node).indexOf(text));
  const visit = (node: MdastNode): void => {
    if (node.type === "link" || node.type === "definition" || node.type === "image") {
      const wrong = linkFault(node.url, around.addresses);
      if (wrong) faults.push({ offset: within(node, node.url), what: "link", stated: node.url, ...wrong });
    } else if (isTag(node)) {
      faults.push(...tagFaults(node, around, (text) => within(node, text)));
    } else if (node.type === "mdxTextExpression" || node.type === "mdxFlowExpression") {
      const wrong = expressionFault(node.value);
      if (wrong) faults.push({ offset: startOf(node), what: "braces", stated: `{${node.value}}`, ...wrong });
    } else if (node.type === "mdxjsEsm") {
      faults.push({
        offset: startOf(node),
        what: "program text",
        stated: node.value.split("\n")[0],
        found: "an import or export",
        advice: "leave it out: a page may use Markdown and the components of the guide for authors",
      });
    }
    if ("children" in node) node.children.forEach(visit);
  };
  try {
    visit(mdxToMdast(page, { features: { frontmatter: true } }));
  } catch {
    return [];
  }
  return faults.sort((a, b) => a.offset - b.offset).map(faultMaker(file, page));
}

type Wrong = Pick<PageFault, "found" | "advice"> | undefined;

/** What is wrong with where a link leads. */
export function linkFault(url: string, { exact, folders, hidden }: Addresses): Wrong {
  if (ELSEWHERE.test(url) || url.startsWith("#")) return undefined;
  if (!url.startsWith("/") || url.startsWith("//")) {
    const found = /^[a-z][a-z0-9+.-]*:/i.test(url)
      ? "a kind of link that pages do not follow"
      : "no address from the site's root";
    return { found, advice: "begin a link to a page of this site with /, such as /cautions/goggles/" };
  }
  const path = url.replace(/[?#].*$/s, "");
  if (exact.has(path) || hidden.has(path) || folders.some((folder) => path.startsWith(folder))) return undefined;
  if (exact.has(`${path}/`)) return { found: "no slash at its end", advice: `write ${path}/` };
  const near = nearest(path, exact);
  return { found: "no page there", advice: near ? `did you mean ${near}` : "correct the address, or write the page" };
}

/** The address that differs in the fewest letters, if in few. */
function nearest(path: string, all: ReadonlySet<string>): string | undefined {
  let best: { address: string; apart: number } | undefined;
  for (const address of all) {
    if (Math.abs(address.length - path.length) > 3) continue;
    const apart = lettersApart(address, path);
    if (apart <= 3 && (!best || apart < best.apart)) best = { address, apart };
  }
  return best?.address;
}

/** Levenshtein's distance, row by row. */
function lettersApart(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, n) => n);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      next.push(Math.min(next[j - 1] + 1, row[j] + 1, row[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1)));
    }
    row = next;
  }
  return row[b.length];
}

function tagFaults(node: Tag, around: Surroundings, placed: (text: string) => number): PageFault[] {
  const { name } = node;
  // A fragment has no name.
  if (name === null || name === undefined) return [];
  const stated = `<${name}>`;
  if (BLOCKED.includes(name.toLowerCase())) {
    const found = "an element that the site's policy blocks";
    return [{ offset: placed(name), what: "element", stated, found, advice: "leave it out" }];
  }
  if (/^[a-z]/.test(name) && !name.includes(".")) return elementFaults(node, around, placed);
  const known = Object.hasOwn(COMPONENTS, name) ? COMPONENTS[name] : undefined;
  if (!known) {
    const found = "no component of that name";
    const advice = `use one of ${Object.keys(COMPONENTS).join(", ")}; a less-than sign is written &lt;`;
    return [{ offset: placed(name), what: "component", stated, found, advice }];
  }
  const checks = { ...known.needs, ...known.may };
  const given = attributesOf(node);
  const missing = Object.keys(known.needs).filter((attribute) => !given.some((one) => one.name === attribute));
  return [
    ...missing.map((attribute) => ({
      offset: placed(name),
      what: `component ${name}`,
      found: `no ${attribute}`,
      advice: `write <${name} ${attribute}="..." />`,
    })),
    ...given.flatMap((one): PageFault[] => {
      const what = `component ${name}, ${one.name}`;
      if (!Object.hasOwn(checks, one.name)) {
        const advice = `use only ${Object.keys(checks).join(", ") || "the component by itself"}`;
        return [{ offset: placed(one.name), what, found: "an attribute it does not have", advice }];
      }
      const wrong = one.text === undefined ? TO_RUN : checks[one.name](one.text, around.named);
      return wrong ? [{ offset: placed(one.text ?? ""), what, stated: one.text, ...wrong }] : [];
    }),
  ];
}

/** Of plain HTML: where a link leads, and what the policy blocks. */
function elementFaults(node: Tag, { addresses }: Surroundings, placed: (text: string) => number): PageFault[] {
  return attributesOf(node).flatMap(({ name, text }): PageFault[] => {
    if (/^on/i.test(name) || name === "style") {
      const found = "an attribute that the site's policy blocks";
      return [{ offset: placed(name), what: `element ${node.name}, ${name}`, found, advice: "leave it out" }];
    }
    if (node.name !== "a" || name !== "href") return [];
    const found = "a link whose base path nobody puts in front";
    const wrong = linkFault(text ?? "", addresses) ?? {
      found,
      advice: `write it in Markdown: [words](${text ?? "/address/"})`,
    };
    return ELSEWHERE.test(text ?? "") ? [] : [{ offset: placed(text ?? name), what: "link", stated: text, ...wrong }];
  });
}

/** Attributes with their text; undefined where it would have to be run. One without a value says yes. */
function attributesOf(node: Tag): { name: string; text?: string }[] {
  return node.attributes.map((one) => {
    if (one.type !== "mdxJsxAttribute") return { name: "{...}" };
    const { name, value } = one;
    if (value === null || value === undefined) return { name, text: "true" };
    const text = typeof value === "string" ? value : LITERAL.exec(value.value)?.[1];
    return { name, ...(text !== undefined && { text: text.replace(/^(["'])(.*)\1$/s, "$2") }) };
  });
}

/** A number, a yes or no, or a text in quotes. */
const LITERAL = /^\s*(\d+(?:\.\d+)?|true|false|"[^"\\]*"|'[^'\\]*')\s*$/;

const TO_RUN: Wrong = {
  found: "something to be computed",
  advice: 'write the text itself between quotes: of="SO4^2-"',
};

/** A comment or a text in quotes may stand in braces; anything else would have to be run. */
function expressionFault(value: string): Wrong {
  if (/^\s*(?:\/\*[\s\S]*\*\/\s*|(["'`])[^"'`\\$]*\1\s*)?$/.test(value)) return undefined;
  return { found: "something to be computed", advice: "write \\{ and \\} for braces that are to be printed" };
}

const isTag = (node: MdastNode): node is Tag => node.type === "mdxJsxFlowElement" || node.type === "mdxJsxTextElement";
const startOf = (node: MdastNode): number => node.position?.start.offset ?? 0;
