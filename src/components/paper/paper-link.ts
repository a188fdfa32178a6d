/**
 * A whole paper in a link: the paper as it is written, as JSON, compressed (deflate-raw) and in base64url, after "#paper=". A fragment is not
 * sent to any server. Whatever a link holds, no more than a bound is unpacked, and what comes out is only ever read as data.
 */
import * as say from "#words/paper-link.ts";
import { MARK } from "./paper-mark.ts";

/** Longest code of a link that is read, in letters, and most it may unpack to, in bytes. */
export const LONGEST_CODE = 32_000;
export const MOST_UNPACKED = 64_000;

const toBase64Url = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replace(/=+$/, "");

function fromBase64Url(code: string): Uint8Array<ArrayBuffer> {
  const plain = atob(code.replaceAll("-", "+").replaceAll("_", "/"));
  return Uint8Array.from(plain, (letter) => letter.charCodeAt(0));
}

/** The bytes that come out of a stream; undefined as soon as there are more than `most`. */
async function gathered(
  stream: ReadableStream<Uint8Array>,
  most: number,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const reader = stream.getReader();
  const pieces: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      reader.cancel().catch(() => undefined);
      return undefined;
    }
    pieces.push(value);
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}

const streamOf = (bytes: Uint8Array<ArrayBuffer>) => new Blob([bytes]).stream();

/** The fragment of a link that holds the paper. Throws where the browser has no CompressionStream. */
export async function toFragment(written: unknown): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(written));
  const packed = await gathered(
    streamOf(bytes).pipeThrough(new CompressionStream("deflate-raw")),
    Number.POSITIVE_INFINITY,
  );
  return MARK + toBase64Url(packed as Uint8Array);
}

/** The paper in a fragment, as data nobody has looked at yet; or why there is none, as a sentence. */
export async function fromFragment(fragment: string): Promise<{ written: unknown } | { refused: string }> {
  const code = fragment.slice(MARK.length);
  if (code.length > LONGEST_CODE) {
    return { refused: say.codeTooLong(code.length, LONGEST_CODE) };
  }
  let bytes: Uint8Array | undefined;
  try {
    bytes = await gathered(
      streamOf(fromBase64Url(code)).pipeThrough(new DecompressionStream("deflate-raw")),
      MOST_UNPACKED,
    );
  } catch {
    return { refused: say.CUT_OFF };
  }
  if (!bytes) return { refused: say.unpacksTo(MOST_UNPACKED / 1000) };
  try {
    return { written: JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes)) };
  } catch {
    return { refused: say.NO_PAPER };
  }
}
