/** The frontmatter of an MDX page as data, with the place in the file of every entry. */
import { ContentFaults } from "./faults.ts";
import { readYaml, type YamlSource } from "./yaml-source.ts";

export type Frontmatter = YamlSource;

const FENCE = /^\uFEFF?---\r?\n([\s\S]*?)\r?\n---(?:\r?\n|$)/;

/**
 * Reads the frontmatter of `text`.
 * @throws ContentFaults when there is none or it is not YAML
 */
export function readFrontmatter(file: string, text: string): Frontmatter {
  const match = FENCE.exec(text);
  if (!match) {
    throw new ContentFaults([
      {
        file,
        line: 1,
        column: 1,
        what: "no frontmatter",
        found: "a page that does not begin with ---",
        advice: "begin with a line ---, then the practical, then a line ---",
      },
    ]);
  }
  return readYaml(match[1], { file, called: "the frontmatter", lines: text.split(/\r?\n/), above: 1 });
}
