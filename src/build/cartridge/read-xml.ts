/**
 * Reads XML that came from outside into a tree. Strict: what is not well-formed is refused with its place. A document type is refused
 * too, for it could name files or grow without end when its entities are put in; a cartridge has no use for one.
 */
import { SaxesParser } from "saxes";
import { CartridgeFault } from "./cartridge-fault.ts";
import type { XmlElement, XmlNode } from "./xml.ts";

/** Elements inside one another, and in one file: far beyond any course, and quickly read. */
export const DEEPEST = 64;
export const MOST_ELEMENTS = 50_000;

const isElement = (node: XmlNode): boolean => typeof node !== "string";
const hasContent = (node: XmlNode): boolean => typeof node !== "string" || node.trim() !== "";

/** @throws CartridgeFault naming the file, the line and the column */
export function readXml(file: string, text: string): XmlElement {
  const parser = new SaxesParser({ xmlns: true, fileName: file });
  const open: { children: XmlNode[] }[] = [{ children: [] }];
  let count = 0;
  const refuse = (why: string): never => {
    throw new CartridgeFault(`${file}, line ${parser.line}, column ${parser.column}: ${why}`);
  };
  parser.on("error", ({ message }) => refuse(`this is not well-formed XML: ${message.replace(/^.*?\d+:\d+: /, "")}`));
  parser.on("doctype", () => refuse("found a document type (DOCTYPE), expected none in a cartridge."));
  parser.on("opentag", ({ local, uri, attributes }) => {
    count += 1;
    if (open.length > DEEPEST) refuse(`elements stand more than ${DEEPEST} deep, expected fewer.`);
    if (count > MOST_ELEMENTS) refuse(`found more than ${MOST_ELEMENTS} elements, expected fewer.`);
    const own = Object.values(attributes).filter(({ prefix }) => prefix !== "xmlns" && prefix !== "xsi");
    const children: XmlNode[] = [];
    const made: XmlElement = {
      name: local,
      namespace: uri,
      attributes: Object.fromEntries(own.filter(({ name }) => name !== "xmlns").map((one) => [one.local, one.value])),
      children,
    };
    open[open.length - 1].children.push(made);
    open.push({ children });
  });
  parser.on("closetag", () => {
    const closed = open.pop();
    // Between elements blanks and line ends are layout.
    if (!closed?.children.some(isElement)) return;
    const kept = closed.children.filter(hasContent);
    closed.children.length = 0;
    for (const child of kept) closed.children.push(child);
  });
  const addText = (words: string) => {
    if (open.length > 1) open[open.length - 1].children.push(words);
  };
  parser.on("text", addText);
  parser.on("cdata", addText);
  parser.write(text).close();
  const root = open[0].children[0];
  return typeof root === "object" ? root : refuse("found no element, expected one.");
}
