/** Reads the manifest of a cartridge: how it is laid out, and which file is what. Knows nothing of what the files hold. */
import { CartridgeFault } from "./cartridge-fault.ts";
import { repeated } from "./identifiers.ts";
import { MANIFEST, NAMESPACES, SCHEMA, SCHEMA_VERSION } from "./namespaces.ts";
import { allOf, at, elementsOf, textOf, type XmlElement } from "./xml.ts";

export interface Manifest {
  identifier: string;
  title: string;
  description: string;
  folders: Folder[];
  resources: ReadonlyMap<string, ListedResource>;
}

/** Items that stand together; a folder within a folder is one of its own, its title after the outer one's. */
export interface Folder {
  identifier: string;
  title: string;
  items: { identifier: string; title: string; resource: string }[];
}

export interface ListedResource {
  type: string;
  files: string[];
}

/** @throws CartridgeFault with all that is wrong in it */
export function readManifest(root: XmlElement): Manifest {
  const versions = root.namespace?.match(/imscc(?:v(\d)p(\d))?\/imscp_v1p1$/);
  if (root.name !== "manifest" || root.namespace !== NAMESPACES.manifest) {
    const found = versions ? `a cartridge of version ${versions[1] ?? 1}.${versions[2] ?? 0}` : `<${root.name}>`;
    throw new CartridgeFault(`${MANIFEST}: found ${found}, expected the manifest of a Common Cartridge 1.3.`);
  }
  const schema = textOf(at(root, "metadata", "schema")).trim();
  const version = textOf(at(root, "metadata", "schemaversion")).trim();
  const faults: string[] = [];
  if (schema !== SCHEMA || version !== SCHEMA_VERSION) {
    faults.push(
      `${MANIFEST}: found schema "${schema}", version "${version}", expected "${SCHEMA}", version "${SCHEMA_VERSION}".`,
    );
  }
  const organizations = allOf(root, "organization");
  if (organizations.length !== 1) {
    faults.push(`${MANIFEST}: found ${organizations.length} organizations, expected one.`);
  }
  const listed = elementsOf(at(root, "resources") ?? root, "resource");
  const identifiers = [root, ...organizations, ...allOf(root, "item"), ...listed].map(
    ({ attributes }) => attributes.identifier ?? "",
  );
  faults.push(
    ...repeated(identifiers).map((name) => `${MANIFEST}: the identifier "${name}" stands twice, expected once.`),
  );
  const resources = new Map(
    listed.map((resource): [string, ListedResource] => [
      resource.attributes.identifier ?? "",
      {
        type: resource.attributes.type ?? "",
        files: elementsOf(resource, "file").map(({ attributes }) => attributes.href ?? ""),
      },
    ]),
  );
  const top = at(organizations[0], "item");
  const folders = top ? foldersIn(top, "") : [];
  for (const { title, resource } of folders.flatMap(({ items }) => items)) {
    if (!resources.has(resource)) faults.push(`${MANIFEST}: "${title}" leads to ${resource}, which is not listed.`);
  }
  if (faults.length > 0) throw new CartridgeFault(...faults);
  const general = at(root, "metadata", "lom", "general");
  return {
    identifier: root.attributes.identifier ?? "",
    title: textOf(at(general, "title", "string")).trim(),
    description: textOf(at(general, "description", "string")).trim(),
    folders,
    resources,
  };
}

function foldersIn(item: XmlElement, within: string): Folder[] {
  const own = titleOf(item);
  const title = within && own ? `${within} / ${own}` : within + own;
  const children = elementsOf(item, "item");
  const isLeaf = ({ attributes }: XmlElement) => attributes.identifierref !== undefined;
  const items = children.filter(isLeaf).map((leaf) => ({
    identifier: leaf.attributes.identifier ?? "",
    title: titleOf(leaf),
    resource: leaf.attributes.identifierref ?? "",
  }));
  const inner = children.filter((child) => !isLeaf(child)).flatMap((child) => foldersIn(child, title));
  return [...(items.length > 0 ? [{ identifier: item.attributes.identifier ?? "", title, items }] : []), ...inner];
}

const titleOf = (item: XmlElement): string => textOf(at(item, "title")).trim();
