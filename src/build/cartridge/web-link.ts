/** A web link as a file: `webLink` with a title and an address. */
import type { WebLink } from "./cartridge.types.ts";
import { CartridgeFault } from "./cartridge-fault.ts";
import { NAMESPACES, schemaLocation } from "./namespaces.ts";
import { at, element, textOf, type XmlElement } from "./xml.ts";

/** In a window of its own: a course does not let other sites put its pages into frames. */
const TARGET = "_blank";

export const writeWebLink = ({ title, url }: WebLink): XmlElement =>
  element(
    "webLink",
    {
      xmlns: NAMESPACES.webLink,
      "xmlns:xsi": NAMESPACES.instance,
      "xsi:schemaLocation": schemaLocation("webLink"),
    },
    element("title", {}, title),
    element("url", { href: url, target: TARGET }),
  );

/** @throws CartridgeFault when it is no link, or one that does not lead to a page of the web */
export function readWebLink(file: string, root: XmlElement): Pick<WebLink, "title" | "url"> {
  if (root.name !== "webLink" || root.namespace !== NAMESPACES.webLink) {
    throw new CartridgeFault(`${file}: found <${root.name}>, expected a web link of Common Cartridge 1.3.`);
  }
  const url = at(root, "url")?.attributes.href ?? "";
  if (!URL.canParse(url) || !/^https?:$/.test(new URL(url).protocol)) {
    throw new CartridgeFault(`${file}: found the address "${url}", expected one that begins with https:// or http://.`);
  }
  return { title: textOf(at(root, "title")).trim(), url };
}
