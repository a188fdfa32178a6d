/**
 * Lists the sets of unknowns that the tests of a practical decide, and how hard each is:
 * `npm run -s unknowns -- lamp-room-shelf --store "CuSO4, ZnCl2, NH4Cl, MgSO4" --hardness easy`.
 */
import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { ContentFaults } from "../src/authoring/faults.ts";
import { coursePaths } from "../src/build/department/course.ts";
import { useDepartment } from "../src/build/department/department.ts";
import { readPracticalFile } from "../src/build/practical-files.ts";
import { unknownsOf } from "../src/build/unknowns.ts";
import { UnknownReagent } from "../src/engine/bench/operations.ts";
import { NoEquilibrium } from "../src/engine/bench/tube.ts";
import { namedStore } from "./unknowns/named-store.ts";
import { type Asked, readOptions, USAGE } from "./unknowns/options.ts";
import { reportUnknowns } from "./unknowns/report.ts";

const ROOT = resolve(import.meta.dirname, "..");

function fileOf(practical: string): string {
  const known = coursePaths(ROOT);
  const nameOf = (path: string) => path.replace(/.*\/|\.mdx$/g, "");
  const path = known.find((one) => nameOf(one) === practical);
  if (path) return resolve(ROOT, path);
  if (practical.endsWith(".mdx") && existsSync(practical)) return resolve(practical);
  throw new Refused([
    `Found no practical ${practical}, expected one of ${known.map(nameOf).join(", ")}, or the path of an MDX file.`,
  ]);
}

/** What is asked cannot be done; each reason a sentence. */
class Refused extends Error {
  readonly reasons: readonly string[];
  constructor(reasons: readonly string[]) {
    super(reasons.join("\n"));
    this.reasons = reasons;
  }
}

function answer(asked: Asked): string {
  const file = fileOf(asked.practical);
  const read = readPracticalFile(file, readFileSync(file, "utf8"));
  if ("faults" in read) throw new ContentFaults(read.faults);
  const { practical } = read;
  const of = unknownsOf(practical);
  const store = asked.store && namedStore(of.table, asked.store);
  if (store && store.faults.length > 0) throw new Refused(store.faults);
  return reportUnknowns(of, {
    ...asked,
    title: practical.title,
    store: store?.salts ?? of.store,
    leftOut: store?.leftOut ?? [],
  });
}

const options = readOptions(process.argv.slice(2));
try {
  useDepartment(ROOT);
  if (options === "help") console.log(USAGE);
  else if ("faults" in options) throw new Refused([...options.faults, "", USAGE]);
  else console.log(answer(options.asked));
} catch (error) {
  if (error instanceof Refused || error instanceof ContentFaults) console.error(error.message);
  else if (error instanceof NoEquilibrium || error instanceof UnknownReagent || error instanceof RangeError) {
    console.error(`The engine cannot carry out this procedure: ${error.message} npm run check says more.`);
  } else throw error;
  process.exitCode = 1;
}
