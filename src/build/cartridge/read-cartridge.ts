/**
 * Reads a cartridge back: its links and questions, and what else it holds, counted. What is broken is told all at once; nothing is
 * fetched, run or written.
 */
import type { Cartridge, Unit } from "./cartridge.types.ts";
import { CartridgeFault } from "./cartridge-fault.ts";
import { MANIFEST, RESOURCE_TYPES } from "./namespaces.ts";
import { readAssessment } from "./read-assessment.ts";
import { type Folder, type ListedResource, type Manifest, readManifest } from "./read-manifest.ts";
import { readXml } from "./read-xml.ts";
import { type Archive, unpack } from "./unpack.ts";
import { readWebLink } from "./web-link.ts";

export interface ReadCartridge {
  cartridge: Cartridge;
  /** What is in it besides links and questions with choices, in sentences. */
  besides: string[];
}

/**
 * @param bytes of the `.imscc` file
 * @throws CartridgeFault with every reason why it cannot be read
 */
export async function readCartridge(bytes: Uint8Array): Promise<ReadCartridge> {
  const archive = await unpack(bytes);
  const manifest = readManifest(readXml(MANIFEST, manifestIn(archive)));
  const missing = missingFiles(archive, manifest);
  if (missing.length > 0) throw new CartridgeFault(...missing);
  const faults: string[] = [];
  const besides = unlistedFiles(archive, manifest);
  const units: Unit[] = [];
  for (const folder of manifest.folders) units.push(readUnit(folder, archive, manifest, faults, besides));
  if (faults.length > 0) throw new CartridgeFault(...faults);
  const { identifier, title, description } = manifest;
  return { cartridge: { identifier, title, description, units }, besides };
}

function manifestIn({ names, xml }: Archive): string {
  const text = xml.get(MANIFEST);
  if (text !== undefined) return text;
  const deeper = [...names].find((name) => name.endsWith(`/${MANIFEST}`));
  throw new CartridgeFault(
    deeper
      ? `Found the manifest in ${deeper}, expected it at the root of the archive: pack what is in the folder, not the folder.`
      : `Found no ${MANIFEST} in the archive, expected one at its root: this is no cartridge.`,
  );
}

const listedIn = ({ resources }: Manifest): string[] => [...resources.values()].flatMap(({ files }) => files);

/** A name in a manifest is an address, with signs such as blanks escaped. */
const plainName = (href: string): string => {
  try {
    return decodeURIComponent(href);
  } catch {
    return href;
  }
};
const inArchive = ({ names }: Archive, href: string): string | undefined =>
  [href, plainName(href)].find((name) => names.has(name));

const missingFiles = (archive: Archive, manifest: Manifest): string[] =>
  listedIn(manifest)
    .filter((file) => inArchive(archive, file) === undefined)
    .map((file) => `${MANIFEST}: lists ${file}, which is not in the archive.`);

function unlistedFiles(archive: Archive, manifest: Manifest): string[] {
  const listed = new Set(listedIn(manifest).map((file) => inArchive(archive, file)));
  const more = [...archive.names].filter((name) => name !== MANIFEST && !listed.has(name));
  return more.map((name) => `${name} is not listed in the manifest.`);
}

/** Adds what is wrong to `faults`, and what it does not read to `besides`. */
function readUnit(
  { identifier, title, items }: Folder,
  archive: Archive,
  { resources }: Manifest,
  faults: string[],
  besides: string[],
): Unit {
  const unit: Unit = { identifier, title, links: [] };
  for (const item of items) {
    const resource = resources.get(item.resource) as ListedResource;
    try {
      if (resource.type === RESOURCE_TYPES.webLink) {
        unit.links.push({ identifier: item.identifier, ...contentOf(resource, archive, readWebLink) });
      } else if (resource.type === RESOURCE_TYPES.assessment && !unit.assessment) {
        const { otherQuestions, ...read } = contentOf(resource, archive, readAssessment);
        unit.assessment = { identifier: item.identifier, ...read };
        if (otherQuestions > 0) besides.push(`${item.title}: ${otherQuestions} questions without choices.`);
      } else besides.push(`${item.title}: ${resource.type}.`);
    } catch (error) {
      if (!(error instanceof CartridgeFault)) throw error;
      faults.push(...error.reasons);
    }
  }
  return unit;
}

function contentOf<T>(
  { type, files }: ListedResource,
  archive: Archive,
  read: (file: string, root: ReturnType<typeof readXml>) => T,
): T {
  if (files.length !== 1) {
    throw new CartridgeFault(`${MANIFEST}: a resource of type ${type} lists ${files.length} files, expected one.`);
  }
  const name = inArchive(archive, files[0]) ?? files[0];
  const text = archive.xml.get(name);
  if (text === undefined) throw new CartridgeFault(`${name}: expected an XML file.`);
  return read(name, readXml(name, text));
}
