/** The department's style sheet on disk, held against ours. */
import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { ContentFault } from "../../authoring/faults.ts";
import { departmentFolder } from "./department.ts";
import { themeFaults } from "./theme-faults.ts";

const INK = resolve(import.meta.dirname, "../../styles/ink.css");

/** @returns nothing where the department has no colours of its own */
export function checkTheme(root: string): ContentFault[] {
  const folder = departmentFolder()?.folder;
  const file = `${folder}/theme.css`;
  if (folder === undefined || !existsSync(join(root, file))) return [];
  return themeFaults(file, readFileSync(INK, "utf8"), readFileSync(join(root, file), "utf8"));
}
