/** What every cached result hangs on besides its own input: the program that made it. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { LANGUAGE } from "#words/language.ts";

/** Folders whose source decides a result: the engine with its constants, what the build makes of it, and the words for both. */
const SOURCES = ["src/engine", "src/build", "src/words"];

/**
 * A name for the program as it stands in `root`: it changes with any byte of its source, with any package (zod and yaml read practicals), and
 * with the JavaScript engine, whose arithmetic and way of writing objects down may differ, and with the language of its words.
 */
export function programVersion(root: string): string {
  const hash = createHash("sha256");
  for (const folder of SOURCES) {
    for (const file of readdirSync(join(root, folder), { recursive: true, encoding: "utf8" }).sort()) {
      if (!/\.(?:ts|json)$/.test(file)) continue;
      hash.update(`\0${folder}/${file}\0`).update(readFileSync(join(root, folder, file)));
    }
  }
  hash.update("\0packages\0").update(readFileSync(join(root, "package-lock.json")));
  return hash.update(`\0v8 ${process.versions.v8}, ${process.arch}, ${LANGUAGE}`).digest("hex").slice(0, 20);
}
