/**
 * The manifest of a cartridge: what it is, how it is laid out for whoever opens it, and which file is what. Structure after the Content
 * Packaging profile of Common Cartridge 1.3 (ccv1p3_imscp_v1p2_v1p0.xsd).
 */
import type { Cartridge, Unit } from "./cartridge.types.ts";
import { NAMESPACES, RESOURCE_TYPES, SCHEMA, SCHEMA_VERSION, schemaLocation } from "./namespaces.ts";
import { element, type XmlElement } from "./xml.ts";

/** A file of the cartridge with the type it is listed under. */
export interface Resource {
  /** Of the thing it holds; its own identifiers are made from it. */
  identifier: string;
  title: string;
  type: (typeof RESOURCE_TYPES)[keyof typeof RESOURCE_TYPES];
  file: string;
}

/** The files of a unit, in the order in which they are shown. */
export const resourcesOf = ({ links, assessment }: Unit): Resource[] => [
  ...links.map(({ identifier, title }) => ({
    identifier,
    title,
    type: RESOURCE_TYPES.webLink,
    file: `links/${identifier}.xml`,
  })),
  ...(assessment
    ? [
        {
          identifier: assessment.identifier,
          title: assessment.title,
          type: RESOURCE_TYPES.assessment,
          file: `questions/${assessment.identifier}.xml`,
        },
      ]
    : []),
];

const LANGUAGE = "en-GB";

export function writeManifest({ identifier, title, description, units }: Cartridge): XmlElement {
  return element(
    "manifest",
    {
      identifier,
      xmlns: NAMESPACES.manifest,
      "xmlns:lom": NAMESPACES.metadata,
      "xmlns:xsi": NAMESPACES.instance,
      "xsi:schemaLocation": schemaLocation("manifest", "metadata"),
    },
    element(
      "metadata",
      {},
      element("schema", {}, SCHEMA),
      element("schemaversion", {}, SCHEMA_VERSION),
      element(
        "lom:lom",
        {},
        element(
          "lom:general",
          {},
          element("lom:title", {}, inLanguage(title)),
          element("lom:language", {}, LANGUAGE),
          element("lom:description", {}, inLanguage(description)),
        ),
      ),
    ),
    element(
      "organizations",
      {},
      element(
        "organization",
        { identifier: "organization", structure: "rooted-hierarchy" },
        element("item", { identifier: "root" }, ...units.map(writeUnit)),
      ),
    ),
    element(
      "resources",
      {},
      ...units
        .flatMap(resourcesOf)
        .map(({ identifier, type, file }) =>
          element("resource", { identifier: resourceName(identifier), type }, element("file", { href: file })),
        ),
    ),
  );
}

const resourceName = (identifier: string): string => `resource-${identifier}`;

const inLanguage = (text: string): XmlElement => element("lom:string", { language: LANGUAGE }, text);

const writeUnit = (unit: Unit): XmlElement =>
  element(
    "item",
    { identifier: unit.identifier },
    element("title", {}, unit.title),
    ...resourcesOf(unit).map(({ identifier, title }) =>
      element("item", { identifier, identifierref: resourceName(identifier) }, element("title", {}, title)),
    ),
  );
