/** A cartridge as the bytes of an `.imscc` file: a zip archive with the manifest at its root. The same course gives the same bytes. */
import { strToU8, zipSync } from "fflate";
import { writeAssessment } from "./assessment.ts";
import type { Cartridge } from "./cartridge.types.ts";
import { CartridgeFault } from "./cartridge-fault.ts";
import { repeated } from "./identifiers.ts";
import { resourcesOf, writeManifest } from "./manifest.ts";
import { MANIFEST } from "./namespaces.ts";
import { writeWebLink } from "./web-link.ts";
import { allOf, writeDocument, type XmlElement } from "./xml.ts";

/** Every file bears the same date, so that two exports differ only where the course does. Local time, for that is what a zip archive keeps. */
const date = (): Date => new Date(2020, 0, 1);

/** @throws CartridgeFault when two things would bear one identifier */
export function writeCartridge(cartridge: Cartridge): Uint8Array {
  const manifest = writeManifest(cartridge);
  const twice = repeated([manifest, ...allElements(manifest)].flatMap(({ attributes }) => attributes.identifier ?? []));
  if (twice.length > 0) {
    throw new CartridgeFault(
      ...twice.map((name) => `Two parts of the cartridge would be called ${name}: rename one of the two files.`),
    );
  }
  const files: [string, XmlElement][] = [[MANIFEST, manifest]];
  for (const unit of cartridge.units) {
    const contents = [...unit.links.map(writeWebLink), ...(unit.assessment ? [writeAssessment(unit.assessment)] : [])];
    for (const [index, { file }] of resourcesOf(unit).entries()) files.push([file, contents[index]]);
  }
  const zipped = files.map(([file, root]) => [file, strToU8(writeDocument(root))] as const);
  return zipSync(Object.fromEntries(zipped), { level: 9, mtime: date() });
}

const allElements = (root: XmlElement): XmlElement[] =>
  ["item", "resource", "organization"].flatMap((name) => allOf(root, name));
