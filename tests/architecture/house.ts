import type { SourceFiles } from "./source-files.ts";

const LONGEST = 400;
const NAMELESS = /^(?:utils?|helpers?|misc|common)$/i;

/** Data and prose may be long; everything else is about one thing and stays readable. */
const isData = (path: string): boolean => /\/(?:constants|content)\//.test(path);

export function tooLong(files: SourceFiles): string[] {
  return [...files].flatMap(([path, text]) => {
    const lines = text.replace(/\n$/, "").split("\n").length;
    if (isData(path) || lines <= LONGEST) return [];
    return [`${path} has ${lines} lines; ${LONGEST} are allowed. Move one of its subjects into a file of its own.`];
  });
}

export function namedForNothing(paths: Iterable<string>): string[] {
  return [...paths].flatMap((path) => {
    const part = path.split("/").find((name) => NAMELESS.test(name.split(".")[0]));
    return part === undefined ? [] : [`${path}: "${part}" names no subject. Use the trade's word for what it holds.`];
  });
}

export function downloadAddresses(lockfile: string): string[] {
  return lockfile
    .split("\n")
    .flatMap((line, at) =>
      line.includes('"resolved": "https')
        ? [`package-lock.json:${at + 1} holds a download address; run npm install with the .npmrc of this repository.`]
        : [],
    );
}
