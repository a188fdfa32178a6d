/** Weighs what a reader loads who first changes a curve: the engine in its worker, and the page's end of the talk with it. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

/** Bytes after gzip. */
export interface EngineWeight {
  worker: number;
  desk: number;
}

/** @throws Error when the built site in `dist` has not just one file of each, or the worker is no longer whole in one */
export function weighEngine(dist: string): EngineWeight {
  const worker = script(dist, "curve.worker");
  if (/\bimport\s*[("'{*]|\bfrom\s*["']\.\//.test(worker)) {
    throw new Error("The worker imports another file; its weight must be counted as well.");
  }
  return { worker: gzipSync(worker).length, desk: gzipSync(script(dist, "curve-desk")).length };
}

function script(dist: string, name: string): string {
  const folder = join(dist, "_astro");
  const found = readdirSync(folder).filter((file) => file.startsWith(name) && file.endsWith(".js"));
  if (found.length !== 1) throw new Error(`${folder} has ${found.length} files ${name}*.js; expected one.`);
  return readFileSync(join(folder, found[0]), "utf8");
}
