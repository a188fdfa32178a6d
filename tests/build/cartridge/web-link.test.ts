/**
 * Web links. Structure after the published schema of their next version, ccv1p4_imswl_v1p4.xsd, whose history says that versions 1.1 to 1.4
 * changed the namespace only; the schema of 1.3 could not be had, its namespace is the one its users write.
 */
import { expect, test } from "vitest";
import { readXml } from "../../../src/build/cartridge/read-xml.ts";
import { readWebLink, writeWebLink } from "../../../src/build/cartridge/web-link.ts";
import { writeDocument } from "../../../src/build/cartridge/xml.ts";
import { breaches, type Rule } from "./content-model.ts";
import { AWKWARD } from "./courses.ts";

const RULES: Record<string, Rule> = {
  // WebLink.Type, URL.Type
  webLink: { holds: /^title url $/ },
  title: { holds: "text" },
  url: { holds: "nothing", required: ["href"], optional: ["target", "windowFeatures"] },
};
const NAMESPACE = "http://www.imsglobal.org/xsd/imsccv1p3/imswl_v1p3";

test.each(AWKWARD.units.flatMap(({ links }) => links))("$title", (link) => {
  const root = readXml("link.xml", writeDocument(writeWebLink(link)));
  expect(breaches(root, RULES)).toEqual([]);
  expect(root.namespace).toBe(NAMESPACE);
  expect(readWebLink("link.xml", root)).toEqual({ title: link.title, url: link.url });
});

test.each(["javascript:alert(1)", "/practicals/", "", "data:text/html,x"])(
  "an address such as %j is refused",
  (url) => {
    const root = readXml("link.xml", `<webLink xmlns="${NAMESPACE}"><title>x</title><url href="${url}"/></webLink>`);
    expect(() => readWebLink("link.xml", root)).toThrow(/link\.xml: found the address .*, expected one that begins/);
  },
);
