/** The practicals a department shows: those that come with the course and its own. */

import { LANGUAGE } from "#words/language.ts";
import { ContentFaults } from "../../authoring/faults.ts";
import { practicalName, practicalPaths, SHIPPED, translatedFolder } from "../practical-paths.ts";
import { type Department, department, departmentFolder } from "./department.ts";

/** Folder of the department's own practicals, relative to the project; undefined where there is no department. */
export function ownPracticals(): string | undefined {
  const place = departmentFolder();
  return place && `${place.folder}/practicals`;
}

function isShown(name: string): boolean {
  const { show, hide } = choice();
  return show ? show.includes(name) : !hide?.includes(name);
}

/** While the department's file has faults, which the check reports, everything is shown. */
function choice(): Department["practicals"] {
  try {
    return department().practicals;
  } catch (error) {
    if (error instanceof ContentFaults) return {};
    throw error;
  }
}

/** Where the practicals of a site lie, relative to `root`. Of two of the same name the later takes the place of the other. */
export function practicalFolders(): string[] {
  const own = ownPracticals();
  return [SHIPPED, translatedFolder(LANGUAGE), ...(own === undefined ? [] : [own])];
}

/** Paths of all practicals of the site, relative to `root`: ours, in the language of the site where there is one, and the department's. */
export function coursePaths(root: string): string[] {
  const left = leftOut(root);
  return allPaths(root).filter((path) => !left.includes(path));
}

const allPaths = (root: string): string[] => practicalFolders().flatMap((folder) => practicalPaths(root, folder));

/** Paths of practicals that lie there and are not shown: hidden, or replaced by one of the same name. */
export function leftOut(root: string): string[] {
  const all = allPaths(root);
  const last = new Map(all.map((path) => [practicalName(path), path]));
  return all.filter((path) => !isShown(practicalName(path)) || last.get(practicalName(path)) !== path);
}

/** Whether an address of the site, from its root, leads to one of our practicals that the site does not have. */
export function isHidden(address: string): boolean {
  const name = /^\/practicals\/([^/?#]+)\//.exec(address)?.[1];
  const root = departmentFolder()?.root;
  if (name === undefined || root === undefined) return false;
  const named = (path: string) => practicalName(path) === name;
  return practicalPaths(root, SHIPPED).some(named) && !coursePaths(root).some(named);
}
