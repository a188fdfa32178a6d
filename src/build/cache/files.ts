/** Results on disk, one a file, each under the hash of what it was made from. Whatever is wrong with a file, it counts as not there. */
import { createHash, randomBytes } from "node:crypto";
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { deserialize, serialize } from "node:v8";

const sumOf = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest();
const SUM_BYTES = 32;

/** The file for a result of this name made from this input. */
export function fileFor(folder: string, name: string, input: string): string {
  const hash = createHash("sha256").update(`${name}\0${input}`).digest("hex");
  return join(folder, hash.slice(0, 2), `${hash.slice(2)}.bin`);
}

/** What the file holds: a copy of its own each time; undefined when it is not there, cut short, changed or foreign. */
export function readResult(file: string): { value: unknown } | undefined {
  try {
    const bytes = readFileSync(file);
    const payload = bytes.subarray(SUM_BYTES);
    if (!sumOf(payload).equals(bytes.subarray(0, SUM_BYTES))) return undefined;
    return { value: deserialize(payload) };
  } catch {
    return undefined;
  }
}

/**
 * Writes a result whole or not at all: under a name of its own first, then in its place, so that nobody reads half of it and of two writers
 * one wins. A full or read-only disk costs time later, not the result now.
 */
export function writeResult(file: string, value: unknown): void {
  const payload = serialize(value);
  const draft = `${file}.${process.pid}-${randomBytes(6).toString("hex")}`;
  try {
    mkdirSync(dirname(file), { recursive: true });
  } catch {
    return;
  }
  try {
    writeFileSync(draft, Buffer.concat([sumOf(payload), payload]));
    renameSync(draft, file);
  } catch {
    rmSync(draft, { force: true });
  }
}
