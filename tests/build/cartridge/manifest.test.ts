/**
 * The manifest and the archive against Common Cartridge 1.3. Rules with a number are those of the published schema
 * ccv1p3_imscp_v1p2_v1p0.xsd (IMS CC 1.3 CP 1.2, final release; complex types by name, Schematron rules by number). What the pages of the
 * specification say besides and could be had only from memory says so.
 */
import { unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { writeManifest } from "../../../src/build/cartridge/manifest.ts";
import { readXml } from "../../../src/build/cartridge/read-xml.ts";
import { writeCartridge } from "../../../src/build/cartridge/write-cartridge.ts";
import { allOf, at, elementsOf, textOf, writeDocument, type XmlElement } from "../../../src/build/cartridge/xml.ts";
import { breaches, type Rule } from "./content-model.ts";
import { AWKWARD, ofCourse } from "./courses.ts";

const CP = "http://www.imsglobal.org/xsd/imsccv1p3/imscp_v1p1";
const LOM = "http://ltsc.ieee.org/xsd/imsccv1p3/LOM/manifest";

const RULES: Record<string, Rule> = {
  // Manifest.Type: metadata, organizations, resources, in this order, each once.
  manifest: { holds: /^metadata organizations resources (authorizations )?$/, required: ["identifier"] },
  // ManifestMetadata.Type
  "manifest/metadata": { holds: /^schema schemaversion lom (curriculumStandardsMetadataSet )?$/ },
  schema: { holds: "text" },
  schemaversion: { holds: "text" },
  // IEEE LOM in the loose binding of the cartridge: general with each of these at most once (summary of its schema; not the schema itself).
  lom: { holds: /^general $/ },
  general: { holds: /^title language description $/ },
  description: { holds: /^string $/ },
  language: { holds: "text" },
  "manifest/metadata/lom/general/title": { holds: /^string $/ },
  string: { holds: "text", optional: ["language"] },
  // Organizations.Type: one at most. Organization.Type: one top item.
  organizations: { holds: /^(organization )?$/ },
  organization: { holds: /^(title )?item (metadata )?$/, required: ["identifier", "structure"] },
  // ItemOrg.Type: no title, no reference.
  "manifest/organizations/organization/item": { holds: /^(item )*(metadata )?$/, required: ["identifier"] },
  // Item.Type: exactly one title, first.
  item: { holds: /^title (item )*(metadata )?$/, required: ["identifier"], optional: ["identifierref"] },
  title: { holds: "text" },
  resources: { holds: /^(resource )*$/ },
  // Resource.Type; rules 2a and 3a: the file, 2b and 3b: one only, 2c and 3c: no href, 2d: no dependency.
  resource: { holds: /^file $/, required: ["identifier", "type"] },
  file: { holds: "nothing", required: ["href"] },
};

describe.each([
  ["a course", () => ofCourse().cartridge],
  ["awkward texts", () => AWKWARD],
])("the manifest of %s", (_, cartridge) => {
  const root = readXml("imsmanifest.xml", writeDocument(writeManifest(cartridge())));
  const files = unzipSync(writeCartridge(cartridge()));
  const resources = allOf(root, "resource");

  test("elements, their order and their attributes (complex types of the schema)", () => {
    expect(breaches(root, RULES)).toEqual([]);
  });

  test("namespaces: targetNamespace of the schema, and of the imported LOM", () => {
    const spaces = (of: XmlElement): string[] => [
      of.namespace ?? "",
      ...of.children.flatMap((child) => (typeof child === "string" ? [] : spaces(child))),
    ];
    expect(root.namespace).toBe(CP);
    expect(new Set(spaces(root))).toEqual(new Set([CP, LOM]));
    expect(at(root, "metadata", "lom")?.namespace).toBe(LOM);
  });

  test("schema and version (ManifestMetadata.Type, enumerations)", () => {
    expect(textOf(at(root, "metadata", "schema"))).toBe("IMS Common Cartridge");
    expect(textOf(at(root, "metadata", "schemaversion"))).toBe("1.3.0");
  });

  test("one organization, a rooted hierarchy (Organization.Type, fixed value)", () => {
    expect(allOf(root, "organization").map(({ attributes }) => attributes.structure)).toEqual(["rooted-hierarchy"]);
  });

  test("identifiers are XML names and stand once (xs:ID)", () => {
    const all = [root, ...["organization", "item", "resource"].flatMap((name) => allOf(root, name))];
    const names = all.map(({ attributes }) => attributes.identifier);
    expect(names.filter((name) => !/^[A-Za-z_][\w.-]*$/.test(name))).toEqual([]);
    expect(new Set(names).size).toBe(names.length);
  });

  test("items refer to resources (xs:IDREF), each resource to one item; an item that refers holds no items (rule 8b)", () => {
    const references = allOf(root, "item").flatMap(({ attributes }) => attributes.identifierref ?? []);
    expect(references.toSorted()).toEqual(resources.map(({ attributes }) => attributes.identifier).toSorted());
    const leaves = allOf(root, "item").filter(({ attributes }) => attributes.identifierref);
    expect(leaves.flatMap((leaf) => elementsOf(leaf, "item"))).toEqual([]);
  });

  test("resources are links and assessments only (Resource.Type, enumeration): no web content", () => {
    const types = new Set(resources.map(({ attributes }) => attributes.type));
    expect(types).toEqual(new Set(["imswl_xmlv1p3", "imsqti_xmlv1p2/imscc_xmlv1p3/assessment"]));
  });

  // That the manifest lies at the root under this name, and that every file is listed, is from memory.
  test("the manifest lies at the root; every file listed is there, every file there is listed once", () => {
    const listed = allOf(root, "file").map(({ attributes }) => attributes.href);
    expect(Object.keys(files).toSorted()).toEqual(["imsmanifest.xml", ...listed].toSorted());
    expect(Object.keys(files)[0]).toBe("imsmanifest.xml");
  });

  // From memory: paths are relative, with a forward slash, and stay inside.
  test("paths are plain", () => {
    expect(Object.keys(files).filter((name) => !/^[\w-][\w.-]*(\/[\w-][\w.-]*)?$/.test(name))).toEqual([]);
  });
});
