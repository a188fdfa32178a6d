/** Every address of the site, from its root, without building it: what a link on an authored page may lead to. */
import { existsSync, readdirSync } from "node:fs";
import { resolve } from "node:path";
import { coursePaths, leftOut } from "../department/course.ts";
import { practicalName, practicalPaths } from "../practical-paths.ts";

const PAGES = resolve(import.meta.dirname, "../../pages");
const PUBLIC = resolve(import.meta.dirname, "../../../public");

/** Pages whose addresses hang on something else than the names of files, such as an embedded part of another page. */
const ANY = /\[(?!slug\])/;

const filesBelow = (folder: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, encoding: "utf8" }).map((name) => name.replaceAll("\\", "/"))
    : [];

export interface Addresses {
  /** With a slash at the end, or with the ending of a file. */
  exact: ReadonlySet<string>;
  /** Below these anything may be. */
  folders: readonly string[];
  /** Practicals that lie there and are not shown: a link to one becomes plain words. */
  hidden: ReadonlySet<string>;
}

/** @param root folder of the project whose content is linked */
export function addressesOf(root: string): Addresses {
  const routes = filesBelow(PAGES).filter((name) => /\.(?:astro|ts)$/.test(name));
  const exact = routes.flatMap((name) => (ANY.test(name) ? [] : addressesOfRoute(root, name)));
  const files = filesBelow(PUBLIC).map((name) => `/${name}`);
  const hidden = leftOut(root).map((path) => `/practicals/${practicalName(path)}/`);
  return {
    exact: new Set([...exact, ...files]),
    folders: routes.flatMap((name) => (ANY.test(name) ? [`/${name.slice(0, name.search(ANY))}`] : [])),
    hidden: new Set(hidden.filter((address) => !exact.includes(address))),
  };
}

function addressesOfRoute(root: string, name: string): string[] {
  const path = name.endsWith(".ts")
    ? name.replace(/\.ts$/, "")
    : `${name.replace(/\.astro$/, "").replace(/(?:^|\/)index$/, "")}/`;
  const address = `/${path === "/" ? "" : path}`;
  if (!address.includes("[slug]")) return [address];
  const [folder] = name.split("/");
  // Pages of other folders than the content's, such as those for a frame, are about a practical.
  const others = folder === "practicals" ? [] : practicalPaths(root, `src/content/${folder}`);
  const names =
    others.length > 0
      ? others.map((file) => file.slice(`src/content/${folder}/`.length).replace(/\.mdx$/, ""))
      : coursePaths(root).map(practicalName);
  return names.map((one) => address.replace("[slug]", () => one));
}
