/**
 * Unpacks an archive that came from outside, in memory and within bounds: a file that says it is small and is not ends the reading at
 * the size it said; names that lead out of the archive, files that differ from their checksum and encrypted ones are refused.
 */
import { crc32 } from "node:zlib";
import { type Entry, fromBufferPromise, type ZipFile } from "yauzl";
import { CartridgeFault } from "./cartridge-fault.ts";
import { repeated } from "./identifiers.ts";

/** A course of links and questions is a hundredth of this. Sizes in bytes. */
export const BOUNDS = { archive: 64_000_000, files: 5_000, file: 4_000_000, unpacked: 64_000_000 } as const;

export interface Archive {
  /** Every file's name, folders left out. */
  names: ReadonlySet<string>;
  /** Contents of the XML files: nothing else in a cartridge is looked into. */
  xml: Map<string, string>;
}

/** @throws CartridgeFault with all that is wrong as far as it can be read */
export async function unpack(bytes: Uint8Array): Promise<Archive> {
  if (bytes.length > BOUNDS.archive) {
    throw new CartridgeFault(`The file has ${bytes.length} bytes, expected at most ${BOUNDS.archive}.`);
  }
  const zip = await opened(bytes);
  const entries = await entriesOf(zip);
  const faults = entries.flatMap(faultOf);
  const names = entries.map(({ fileName }) => fileName);
  faults.push(...repeated(names).map((name) => `${name}: stands twice in the archive, expected once.`));
  const read = entries.filter(isXml);
  const size = read.reduce((sum, { uncompressedSize }) => sum + uncompressedSize, 0);
  if (size > BOUNDS.unpacked) {
    faults.push(`The XML files would unpack to ${size} bytes, expected at most ${BOUNDS.unpacked}.`);
  }
  if (faults.length > 0) throw new CartridgeFault(...faults);
  const xml = new Map<string, string>();
  for (const entry of read) xml.set(entry.fileName, await contentOf(zip, entry));
  return { names: new Set(names), xml };
}

const isXml = ({ fileName }: Entry): boolean => /\.xml$/i.test(fileName);

async function opened(bytes: Uint8Array): Promise<ZipFile> {
  try {
    return await fromBufferPromise(Buffer.from(bytes), { lazyEntries: true, strictFileNames: true });
  } catch (error) {
    throw new CartridgeFault(
      `This is no zip archive, or its end is missing (${wordsOf(error)}). A cartridge is one file that ends in .imscc: export or download it again.`,
    );
  }
}

async function entriesOf(zip: ZipFile): Promise<Entry[]> {
  if (zip.entryCount > BOUNDS.files) {
    throw new CartridgeFault(`The archive holds ${zip.entryCount} files, expected at most ${BOUNDS.files}.`);
  }
  const entries: Entry[] = [];
  try {
    for await (const entry of zip.eachEntry()) if (!entry.fileName.endsWith("/")) entries.push(entry);
  } catch (error) {
    throw new CartridgeFault(`The list of files in the archive cannot be used: ${wordsOf(error)}.`);
  }
  return entries;
}

function faultOf(entry: Entry): string[] {
  const { fileName, uncompressedSize } = entry;
  if (entry.isEncrypted()) return [`${fileName}: is encrypted, expected a file that anyone can read.`];
  if (isXml(entry) && !entry.canDecodeFileData()) return [`${fileName}: is packed in a way that is not known here.`];
  if (isXml(entry) && uncompressedSize > BOUNDS.file) {
    return [`${fileName}: has ${uncompressedSize} bytes, expected at most ${BOUNDS.file}.`];
  }
  return [];
}

async function contentOf(zip: ZipFile, entry: Entry): Promise<string> {
  const parts: Buffer[] = [];
  try {
    for await (const part of await zip.openReadStreamPromise(entry)) parts.push(part);
  } catch (error) {
    throw new CartridgeFault(`${entry.fileName}: cannot be unpacked: ${wordsOf(error)}.`);
  }
  const content = Buffer.concat(parts);
  if (crc32(content) !== entry.crc32) {
    throw new CartridgeFault(`${entry.fileName}: is damaged; its content does not agree with its checksum.`);
  }
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(content);
  } catch {
    throw new CartridgeFault(`${entry.fileName}: is not written in UTF-8.`);
  }
}

const wordsOf = (error: unknown): string => (error instanceof Error ? error.message : String(error)).replace(/\.$/, "");
