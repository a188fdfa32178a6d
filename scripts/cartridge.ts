/**
 * Writes the course as a Common Cartridge 1.3 for a learning platform, or lists what a cartridge holds:
 * `IONWRIGHT_SITE=https://school.example npm run -s cartridge -- --out ionwright.imscc`, `npm run -s cartridge -- --read ionwright.imscc`.
 */
import { readFile, stat, writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import { ContentFaults } from "../src/authoring/faults.ts";
import { useCache } from "../src/build/cache/cache.ts";
import { CartridgeFault } from "../src/build/cartridge/cartridge-fault.ts";
import { readCartridge } from "../src/build/cartridge/read-cartridge.ts";
import { BOUNDS } from "../src/build/cartridge/unpack.ts";
import { writeCartridge } from "../src/build/cartridge/write-cartridge.ts";
import { checkAll } from "../src/build/check-all.ts";
import { coursePaths } from "../src/build/department/course.ts";
import { department, useDepartment } from "../src/build/department/department.ts";
import { readPage, readPracticalFile } from "../src/build/practical-files.ts";
import { practicalName } from "../src/build/practical-paths.ts";
import { type Asked, readOptions, USAGE } from "./cartridge/options.ts";
import { reportCartridge } from "./cartridge/report.ts";
import { SettingFault, siteAddress } from "./site-address.ts";

const ROOT = resolve(import.meta.dirname, "..");

/** Address of the course's first page. */
function homeOf(environment: Readonly<Record<string, string | undefined>>): string {
  const { site, base } = siteAddress(environment, department());
  if (site === undefined) {
    throw new SettingFault(
      "IONWRIGHT_SITE is not set. A learning platform needs whole addresses: give the host the course lives on, and its folder if it has one, such as IONWRIGHT_SITE=https://school.example IONWRIGHT_BASE=/chemistry/ npm run cartridge.",
    );
  }
  return site + base;
}

async function write(out: string): Promise<string> {
  useCache(ROOT);
  useDepartment(ROOT);
  const home = homeOf(process.env);
  await checkAll(ROOT, false);
  // The engine comes with its cache, so only now; a cartridge is read without either.
  const { courseCartridge } = await import("../src/build/cartridge/course.ts");
  const practicals = coursePaths(ROOT).map((path) => {
    const read = readPracticalFile(path, readPage(ROOT, path));
    if ("faults" in read) throw new ContentFaults(read.faults);
    return {
      slug: practicalName(path),
      practical: read.practical,
    };
  });
  const { cartridge, leftOut } = courseCartridge(practicals, home, department().name);
  const bytes = writeCartridge(cartridge);
  await writeFile(out, bytes);
  return reportCartridge({ cartridge, besides: [] }, [
    ...leftOut,
    `Written to ${out}, ${Math.ceil(bytes.length / 1000)} kB.`,
  ]);
}

async function read(file: string): Promise<string> {
  const { size } = await stat(file);
  if (size > BOUNDS.archive)
    throw new CartridgeFault(`The file has ${size} bytes, expected at most ${BOUNDS.archive}.`);
  return reportCartridge(await readCartridge(await readFile(file)));
}

const carryOut = (asked: Asked): Promise<string> => ("read" in asked ? read(asked.read) : write(asked.out));

const options = readOptions(process.argv.slice(2));
try {
  if (options === "help") console.log(USAGE);
  else if ("fault" in options) throw new CartridgeFault(options.fault, "", USAGE);
  else console.log(await carryOut(options.asked));
} catch (error) {
  const isPlain = error instanceof CartridgeFault || error instanceof ContentFaults || error instanceof SettingFault;
  // What the system says of a file that cannot be opened or written names it already.
  const isOfFile = error instanceof Error && "syscall" in error;
  if (!isPlain && !isOfFile) throw error;
  console.error(error.message);
  process.exitCode = 1;
}
