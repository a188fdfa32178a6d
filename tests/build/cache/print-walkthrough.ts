/** Prints what the page of a practical shows, with the cache the environment names: see same-as-computed.test.ts. */
import { keptCurves } from "../../../src/build/kept-pages.ts";
import { readPage, readPracticalFile } from "../../../src/build/practical-files.ts";
import { keepPredictions } from "../../../src/build/predictor.ts";
import { walkthrough } from "../../../src/build/walkthrough.ts";

const path = `src/content/practicals/${process.argv[2]}.mdx`;
const read = readPracticalFile(path, readPage(process.cwd(), path));
if ("faults" in read) throw new Error(`${path} has faults`);
const { practical } = read;
console.log(JSON.stringify([walkthrough(practical), keptCurves(practical)]));
keepPredictions();
