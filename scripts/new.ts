/**
 * Writes a new practical from a few answers, with what the engine predicts filled in for its author to confirm:
 * `npm run new`, or `npm run -s new -- --title "A tin" --samples "Q=CuCl2*2H2O" --tests "sodium-hydroxide, halide"`.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { createInterface } from "node:readline/promises";
import { ContentFaults } from "../src/authoring/faults.ts";
import { coursePaths, ownPracticals } from "../src/build/department/course.ts";
import { useDepartment } from "../src/build/department/department.ts";
import { newPractical } from "../src/build/new-practical/new-practical.ts";
import { readPage, readPracticalFile } from "../src/build/practical-files.ts";
import { SHIPPED } from "../src/build/practical-paths.ts";
import { UnknownReagent } from "../src/engine/bench/operations.ts";
import { TooManyReadings } from "../src/engine/bench/tabulate.ts";
import { NoEquilibrium } from "../src/engine/bench/tube.ts";
import { ask } from "./new/ask.ts";
import { readOptions, type Typed, USAGE } from "./new/options.ts";
import { wantedOf } from "./new/wanted-of.ts";

/** The project that is written into; a test names another. */
const ROOT = process.env.IONWRIGHT_PROJECT ?? resolve(import.meta.dirname, "..");

/** What is asked cannot be done; each reason a sentence. */
class Refused extends Error {
  constructor(reasons: readonly string[]) {
    super(reasons.join("\n"));
  }
}

async function write(typed: Typed): Promise<string> {
  const answered = await answersFor(typed);
  const read = wantedOf(answered, nextOrder());
  if ("faults" in read) throw new Refused([...read.faults, "", "npm run new -- --help tells of each flag."]);
  const folder = typed.course ? SHIPPED : (ownPracticals() ?? "department/practicals");
  const path = `${folder}/${read.name}.mdx`;
  const made = newPractical(read.wanted, path);
  if ("faults" in made) {
    throw new Refused(made.faults.map(({ what, found, advice }) => `${what}: found ${found}. To do: ${advice}.`));
  }
  const file = resolve(ROOT, path);
  mkdirSync(dirname(file), { recursive: true });
  try {
    writeFileSync(file, made.text, { flag: "wx" });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
    throw new Refused([
      `${path} is there already and stays as it is. Give another --name, or take that file away first.`,
    ]);
  }
  return [
    `Written to ${path}. It passes the check.`,
    `Its observations are predicted: try each at the bench, correct what differs, and take "# confirm" away.`,
    "Write your own words below the second ---, and the summary at the top. npm run dev shows the page.",
  ].join("\n");
}

/** Questions are asked only where somebody can answer them. */
async function answersFor(typed: Typed): Promise<Typed> {
  if (!process.stdin.isTTY) return typed;
  const lines = createInterface({ input: process.stdin, output: process.stdout });
  try {
    return await ask(lines, typed);
  } finally {
    lines.close();
  }
}

function nextOrder(): number {
  const orders = coursePaths(ROOT).map((path) => {
    const read = readPracticalFile(path, readPage(ROOT, path));
    return "faults" in read ? 0 : read.practical.order;
  });
  return Math.max(0, ...orders) + 1;
}

const options = readOptions(process.argv.slice(2));
try {
  useDepartment(ROOT);
  if (options === "help") console.log(USAGE);
  else if ("fault" in options) throw new Refused([options.fault, "", USAGE]);
  else console.log(await write(options.typed));
} catch (error) {
  if (error instanceof Refused || error instanceof ContentFaults || error instanceof TooManyReadings) {
    console.error(error.message);
  } else if (error instanceof NoEquilibrium || error instanceof UnknownReagent || error instanceof RangeError) {
    console.error(`The engine cannot carry out these tests on these samples: ${error.message}`);
  } else throw error;
  process.exitCode = 1;
}
