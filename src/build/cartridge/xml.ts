/** XML as a tree, and the tree as text. A cartridge needs elements, attributes and text, nothing else of XML. */

export interface XmlElement {
  /** As written, with its prefix if it has one; without when the tree was read. */
  name: string;
  /** Of a tree that was read; what is written declares its namespaces as attributes. */
  namespace?: string;
  attributes: Readonly<Record<string, string>>;
  children: readonly XmlNode[];
}
export type XmlNode = XmlElement | string;

export const element = (
  name: string,
  attributes: Readonly<Record<string, string>> = {},
  ...children: readonly XmlNode[]
): XmlElement => ({ name, attributes, children });

/** A document: elements that hold only elements get a line each, text stays exactly as it is. */
export const writeDocument = (root: XmlElement): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${writeElement(root, "\n")}\n`;

/** @param newline what begins a line at this depth; without it everything stands in one line, as HTML wants it */
export function writeElement({ name, attributes, children }: XmlElement, newline?: string): string {
  const pairs = Object.entries(attributes).map(([key, value]) => ` ${key}="${escapeAttribute(value)}"`);
  const open = `<${name}${pairs.join("")}`;
  if (children.length === 0) return `${open}/>`;
  const isBlock = newline !== undefined && children.every((child) => typeof child !== "string");
  const deeper = isBlock ? `${newline}  ` : undefined;
  const inner = children.map((child) =>
    typeof child === "string" ? escapeText(child) : (deeper ?? "") + writeElement(child, deeper),
  );
  return `${open}>${inner.join("")}${isBlock ? newline : ""}</${name}>`;
}

/** Signs that XML 1.0 (section 2.2) does not allow at all, not even escaped. */
const FORBIDDEN = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

const NAMED: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const escaped = (sign: string): string => NAMED[sign] ?? `&#${sign.charCodeAt(0)};`;

const escapeText = (text: string): string => text.replace(FORBIDDEN, "\uFFFD").replace(/[&<>\r]/g, escaped);

/** A reader would turn bare line ends and tabs in an attribute into spaces (section 3.3.3). */
const escapeAttribute = (text: string): string => text.replace(FORBIDDEN, "\uFFFD").replace(/[&<>"\t\n\r]/g, escaped);

/** The child elements of this name. */
export const elementsOf = ({ children }: XmlElement, name: string): XmlElement[] =>
  children.filter((child): child is XmlElement => typeof child !== "string" && child.name === name);

/** All elements of this name at any depth, in the order of the document. */
export const allOf = (root: XmlElement, name: string): XmlElement[] =>
  root.children.flatMap((child) =>
    typeof child === "string" ? [] : [...(child.name === name ? [child] : []), ...allOf(child, name)],
  );

/** The first element down this path of names; undefined where it ends. */
export const at = (root: XmlElement | undefined, ...path: string[]): XmlElement | undefined =>
  path.reduce<XmlElement | undefined>((from, name) => from && elementsOf(from, name)[0], root);

/** All text in an element, in order. */
export const textOf = (of: XmlElement | undefined): string =>
  (of?.children ?? []).map((child) => (typeof child === "string" ? child : textOf(child))).join("");
