/** Checks what authors wrote beside the practicals' own frontmatter: equations, links, components, and the frontmatter of all other pages. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { ContentFault } from "../../authoring/faults.ts";
import { TAGS } from "../../words/tags.ts";
import { coursePaths } from "../department/course.ts";
import { checkEquations } from "../equations/check-equations.ts";
import { practicalPaths, readPage, translatedFolder } from "../practical-paths.ts";
import { addressesOf } from "./addresses.ts";
import { checkFrontmatter, checkGlossary, SCHEMAS } from "./check-frontmatter.ts";
import { checkMarkup } from "./check-markup.ts";

const CONTENT = "src/content";
const GLOSSARY = `${CONTENT}/glossary.yaml`;

const namesIn = (root: string, folder: string): string[] =>
  practicalPaths(root, `${CONTENT}/${folder}`).map((path) =>
    path.slice(`${CONTENT}/${folder}/`.length).replace(/\.mdx$/, ""),
  );

/** All faults of all pages that are shown, page by page, in the order of their lines. */
export function checkAllPages(root: string): ContentFault[] {
  const folders = Object.keys(SCHEMAS);
  const others = [CONTENT, ...TAGS.map((tag) => `${CONTENT}/${tag}`)].flatMap((content) =>
    folders.flatMap((folder) => practicalPaths(root, `${content}/${folder}`)),
  );
  const translated = TAGS.flatMap((tag) => practicalPaths(root, translatedFolder(tag)));
  const glossary = existsSync(join(root, GLOSSARY))
    ? checkGlossary(GLOSSARY, readFileSync(join(root, GLOSSARY), "utf8"))
    : { faults: [], terms: [] };
  const around = {
    addresses: addressesOf(root),
    named: { ionTests: namesIn(root, "ion-tests"), terms: glossary.terms },
  };
  const cautions = namesIn(root, "cautions");
  const ofPages = [...new Set([...coursePaths(root), ...translated, ...others])].sort().flatMap((path) => {
    const text = readPage(root, path);
    const folder = folders.find((one) => path.split("/").slice(2, 4).includes(one)) ?? "practicals";
    return [
      ...(others.includes(path) ? checkFrontmatter(path, text, folder, cautions) : []),
      ...checkEquations(path, text),
      ...checkMarkup(path, text, around),
    ].sort((a, b) => a.line - b.line || a.column - b.column);
  });
  return [...glossary.faults, ...ofPages];
}
