/**
 * The names by which Common Cartridge 1.3 knows its parts: namespaces, their schemas and the types of resources, as published in
 * ccv1p3_imscp_v1p2_v1p0.xsd, ccv1p3_imswl_v1p3.xsd and ccv1p3_qtiasiv1p2p1_v1p0.xsd (1EdTech, 2013).
 */
const PROFILE = "http://www.imsglobal.org/profile/cc/ccv1p3";

export const NAMESPACES = {
  manifest: "http://www.imsglobal.org/xsd/imsccv1p3/imscp_v1p1",
  metadata: "http://ltsc.ieee.org/xsd/imsccv1p3/LOM/manifest",
  webLink: "http://www.imsglobal.org/xsd/imsccv1p3/imswl_v1p3",
  questions: "http://www.imsglobal.org/xsd/ims_qtiasiv1p2",
  instance: "http://www.w3.org/2001/XMLSchema-instance",
} as const;

const SCHEMAS = {
  manifest: `${PROFILE}/ccv1p3_imscp_v1p2_v1p0.xsd`,
  metadata: `${PROFILE}/LOM/ccv1p3_lommanifest_v1p0.xsd`,
  webLink: `${PROFILE}/ccv1p3_imswl_v1p3.xsd`,
  questions: `${PROFILE}/ccv1p3_qtiasiv1p2p1_v1p0.xsd`,
} as const;

/** The value of `xsi:schemaLocation`: each namespace with the address of its schema. */
export const schemaLocation = (...parts: (keyof typeof SCHEMAS)[]): string =>
  parts.map((part) => `${NAMESPACES[part]} ${SCHEMAS[part]}`).join(" ");

/** What `metadata` says of the manifest. */
export const SCHEMA = "IMS Common Cartridge";
export const SCHEMA_VERSION = "1.3.0";

export const RESOURCE_TYPES = {
  webLink: "imswl_xmlv1p3",
  assessment: "imsqti_xmlv1p2/imscc_xmlv1p3/assessment",
} as const;

/** The manifest stands at the root of the archive under this name. */
export const MANIFEST = "imsmanifest.xml";
