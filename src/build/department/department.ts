/**
 * The department whose site is built: its folder beside `src`, with `department.yaml`, `practicals/` and `theme.css`, each of them only if
 * wanted. It is read where it is asked for, so that a page sees an edit at once.
 */
import { existsSync, readFileSync } from "node:fs";
import { isAbsolute, join, relative, resolve, sep } from "node:path";
import { ContentFaults } from "../../authoring/faults.ts";
import { practicalName, practicalPaths, SHIPPED } from "../practical-paths.ts";
import { type Department, NO_DEPARTMENT, readDepartment } from "./read-department.ts";

export type { Department } from "./read-department.ts";

/** The environment names the project; without it, as in tests, there is no department and the course is as it comes. */
const PROJECT = "IONWRIGHT_PROJECT";
/** Another folder of the project than `department`; empty for none. */
const FOLDER = "IONWRIGHT_DEPARTMENT";

/** Lets this process and its workers build the site of the project's department. */
export function useDepartment(root: string): void {
  process.env[PROJECT] = root;
}

/** The folder of the project whose site is built. */
export const projectRoot = (): string => process.env[PROJECT] ?? process.cwd();

/** The project and the department's folder in it, relative; undefined where there is none. */
export function departmentFolder(): { root: string; folder: string } | undefined {
  const root = process.env[PROJECT];
  const given = process.env[FOLDER] ?? "department";
  if (root === undefined || given === "") return undefined;
  const folder = relative(root, resolve(root, given));
  if (folder === "" || isAbsolute(folder) || folder.split(sep)[0] === "..") {
    throw new ContentFaults([
      {
        file: given,
        line: 1,
        column: 1,
        what: `${FOLDER} is no folder of the project`,
        found: `the folder ${resolve(root, given)}`,
        advice: `name a folder below ${root}, or leave the variable out`,
      },
    ]);
  }
  return { root, folder: folder.split(sep).join("/") };
}

let last: { file: string; text: string; department: Department } | undefined;

/** @throws ContentFaults with all that is wrong with the department's file */
export function department(): Department {
  const place = departmentFolder();
  const path = place && join(place.root, place.folder, "department.yaml");
  if (!place || !path || !existsSync(path)) return NO_DEPARTMENT;
  const text = readFileSync(path, "utf8");
  if (last?.file === path && last.text === text) return last.department;
  const own = `${place.folder}/practicals`;
  const names = [...practicalPaths(place.root, SHIPPED), ...practicalPaths(place.root, own)].map(practicalName);
  const read = readDepartment(`${place.folder}/department.yaml`, text, [...new Set(names)]);
  if ("faults" in read) throw new ContentFaults(read.faults);
  last = { file: path, text, department: read.department };
  return read.department;
}
