/**
 * Writes walkthroughs as single files that open from disk: all of them into a built site, or one by command,
 * `npm run take-away -- lamp-room-shelf`.
 */
import { existsSync, readFileSync } from "node:fs";
import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { join, relative, resolve } from "node:path";
import { parseArgs } from "node:util";
import { department, useDepartment } from "../src/build/department/department.ts";
import { singleFile } from "../src/build/hosting/single-file.ts";
import { TAKE_AWAY_FOLDER } from "../src/components/take-away/take-away-path.ts";
import { bundled } from "./bundle.ts";
import { DIST, LAST_BUILD, type LastBuild, ROOT } from "./last-build.ts";
import { type SiteAddress, siteAddress } from "./site-address.ts";

/** Stands for a host that is not known. */
const NO_HOST = "http://course.invalid";

const PRACTICALS = "practicals";

/** Names of the walkthroughs of a built site: their folders hold a table of predictions. */
async function walkthroughs(dist: string): Promise<string[]> {
  const folders = await readdir(join(dist, PRACTICALS), { withFileTypes: true });
  const names = folders.filter((one) => one.isDirectory()).map(({ name }) => name);
  return names.filter((name) => existsSync(join(dist, PRACTICALS, name, "predictions.json"))).sort();
}

async function takenAway(
  dist: string,
  { base, site }: SiteAddress,
  names: readonly string[],
): Promise<Map<string, string>> {
  const script = await bundled("src/components/take-away/start.ts", base);
  const files = new Map<string, string>();
  for (const name of names) {
    const folder = join(PRACTICALS, name);
    const html = await readFile(join(dist, folder, "index.html"), "utf8");
    const at = new URL(`${base}${PRACTICALS}/${name}/`, site ?? NO_HOST);
    const read = (path: string) => readFileSync(join(dist, decodeURIComponent(path).slice(base.length)));
    files.set(name, singleFile({ html, at, isHosted: site !== undefined, script, read }));
  }
  return files;
}

/** Writes every walkthrough of a built site to its folder for single files. */
export async function writeTakeAways(dist: string, address: SiteAddress): Promise<void> {
  await mkdir(join(dist, TAKE_AWAY_FOLDER), { recursive: true });
  for (const [name, html] of await takenAway(dist, address, await walkthroughs(dist))) {
    await writeFile(join(dist, TAKE_AWAY_FOLDER, `${name}.html`), html);
  }
}

async function main(): Promise<void> {
  useDepartment(ROOT);
  const { values, positionals } = parseArgs({ allowPositionals: true, options: { out: { type: "string" } } });
  if (!existsSync(LAST_BUILD))
    throw new Error("There is no complete build to take anything from. Build first: npm run build");
  const { base } = JSON.parse(readFileSync(LAST_BUILD, "utf8")) as LastBuild;
  const names = await walkthroughs(DIST);
  const [name, ...more] = positionals;
  if (name === undefined || more.length > 0 || !names.includes(name)) {
    const found = positionals.length === 0 ? "nothing" : `"${positionals.join(" ")}"`;
    throw new Error(
      `Name one walkthrough: found ${found}, expected one of ${names.join(", ")}. For example npm run take-away -- ${names[0]}`,
    );
  }
  const out = resolve(values.out ?? `${name}.html`);
  const html =
    (await takenAway(DIST, { base, site: siteAddress(process.env, department()).site }, [name])).get(name) ?? "";
  await writeFile(out, html);
  console.log(
    `Written to ${relative(process.cwd(), out)}, ${Math.ceil(html.length / 1000)} kB. It opens from disk, without the course.`,
  );
}

if (import.meta.main) {
  try {
    await main();
  } catch (error) {
    console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = 1;
  }
}
