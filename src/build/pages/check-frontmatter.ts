/** The frontmatter of pages beside practicals, and the glossary, held against their schemas: all faults, each with its place. */
import type { z } from "zod";
import { type ContentFault, ContentFaults } from "../../authoring/faults.ts";
import { readFrontmatter } from "../../authoring/frontmatter.ts";
import { readYaml, type YamlSource } from "../../authoring/yaml-source.ts";
import { plainWords } from "../../engine/practical/plain-words.ts";
import { schemaFaults } from "../schema-faults.ts";
import { caution, ionNotes, ionTest, method, term } from "./schemas.ts";

/** By the folder of `src/content` that a page lies in. */
export const SCHEMAS: Readonly<Record<string, z.ZodType>> = {
  "ion-tests": ionTest,
  cautions: caution,
  ions: ionNotes,
  method,
};

/** @param cautions names of the pages of cautions there are */
export function checkFrontmatter(
  file: string,
  text: string,
  folder: string,
  cautions: readonly string[],
): ContentFault[] {
  return reading(() => {
    const source = readFrontmatter(file, text);
    const faults = faultsOf(source, SCHEMAS[folder]);
    const named = (source.data as { cautions?: unknown } | null)?.cautions;
    const unknown = (Array.isArray(named) ? named : []).flatMap((name, index): ContentFault[] =>
      typeof name !== "string" || cautions.includes(name)
        ? []
        : [
            {
              ...source.placeOf(["cautions", index]),
              what: `cautions > ${index}`,
              found: `"${name}", expected a file name in src/content/cautions, without .mdx`,
              advice: `use one of ${cautions.join(", ")}`,
            },
          ],
    );
    return [...faults, ...unknown];
  });
}

/** The glossary's faults, and all names under which its terms can be asked for. */
export function checkGlossary(file: string, text: string): { faults: ContentFault[]; terms: string[] } {
  let terms: string[] = [];
  const faults = reading(() => {
    const source = readYaml(text, { file, called: "the glossary", lines: text.split(/\r?\n/), above: 0 });
    const read = term.array().safeParse(source.data);
    terms = read.success ? read.data.flatMap((one) => [one.term, ...one.also]) : [];
    return faultsOf(source, term.array());
  });
  return { faults, terms };
}

function reading(read: () => ContentFault[]): ContentFault[] {
  try {
    return read();
  } catch (error) {
    if (error instanceof ContentFaults) return [...error.faults];
    throw error;
  }
}

function faultsOf(source: YamlSource, schema: z.ZodType): ContentFault[] {
  const read = schema.safeParse(source.data, { error: plainWords });
  const advice = "correct this entry; the guide for course authors is DEVELOPERS.md";
  return read.success ? [] : schemaFaults(source, read.error, "the frontmatter", advice);
}
