/** Reads the file of a department, with the place of every fault in it. */

import { type ContentFault, ContentFaults } from "../../authoring/faults.ts";
import { readYaml, type YamlSource } from "../../authoring/yaml-source.ts";
import { DEFAULT_CLASS } from "../../engine/constants/class-practice.ts";
import { DEFAULT_TUBES } from "../../engine/constants/glassware.ts";
import { plainWords } from "../../engine/practical/plain-words.ts";
import type { Language } from "../../words/tags.ts";
import { basePath, hostAddress } from "../hosting/base-path.ts";
import { schemaFaults } from "../schema-faults.ts";
import { type DepartmentFile, departmentFile } from "./schema.ts";

/** What a department has said, and the course's own choice where it has said nothing. */
export interface Department {
  name: string;
  base?: string;
  /** Of the host, without a path. */
  site?: string;
  languages: readonly Language[];
  safety: { note?: string; emergency?: string };
  /** Of a bottle, by the reagent's id, mol/dm3. */
  strengths: Readonly<Record<string, number>>;
  notKept: readonly string[];
  ions?: { cations: string[]; anions: string[] };
  /** Ids of constants/glassware.ts. */
  tubes: { testTube: string; boilingTube: string };
  class: { groups: number; sparePercent: number };
  practicals: { show?: string[]; hide?: string[] };
}

export const COURSE_NAME = "Ionwright";

/** A larger file is none that a person wrote, letters. */
const LONGEST = 64_000;

/** The course as it comes. */
export const NO_DEPARTMENT: Department = departmentOf({});

function departmentOf(file: DepartmentFile): Department {
  const { reagents, tubes, class: own } = file;
  return {
    name: file.name ?? COURSE_NAME,
    ...(file.base !== undefined && { base: basePath(file.base) }),
    ...(file.address !== undefined && { site: hostAddress(file.address) }),
    languages: file.languages ?? ["en-GB"],
    safety: file.safety ?? {},
    strengths: Object.fromEntries(
      Object.entries(reagents?.strengths ?? {}).flatMap(([id, at]) => (at ? [[id, at.molPerDm3]] : [])),
    ),
    notKept: reagents?.notKept ?? [],
    ...(file.ions && { ions: file.ions }),
    tubes: {
      testTube: tubes?.test ?? DEFAULT_TUBES.testTube,
      boilingTube: tubes?.boiling ?? DEFAULT_TUBES.boilingTube,
    },
    class: {
      groups: own?.groups ?? DEFAULT_CLASS.groups.value,
      sparePercent: own?.sparePercent ?? DEFAULT_CLASS.sparePercent.value,
    },
    practicals: file.practicals ?? {},
  };
}

/**
 * @param file path for the report
 * @param practicals names of the practicals there are, which `show` and `hide` must name
 * @returns all faults of the file, or what it says
 */
export function readDepartment(
  file: string,
  text: string,
  practicals: readonly string[],
): { department: Department } | { faults: ContentFault[] } {
  const lines = text.split(/\r?\n/);
  if (text.length > LONGEST) {
    const found = `${text.length} letters`;
    const advice = `keep it below ${LONGEST}; start again from department/example.yaml`;
    return { faults: [{ file, line: 1, column: 1, what: "the file is too long", found, advice }] };
  }
  let source: YamlSource;
  try {
    source = readYaml(text, { file, called: "the file", lines, above: 0 });
  } catch (error) {
    if (error instanceof ContentFaults) return { faults: [...error.faults] };
    throw error;
  }
  // A file of comments alone changes nothing.
  const read = departmentFile.safeParse(source.data ?? {}, { error: plainWords });
  const advice = "correct this entry, or take it out; docs/department.md tells of each";
  if (!read.success) return { faults: schemaFaults(source, read.error, "the department", advice) };
  const faults = (["show", "hide"] as const).flatMap((key) =>
    (read.data.practicals?.[key] ?? []).flatMap((name, index): ContentFault[] => {
      if (practicals.includes(name)) return [];
      const path = ["practicals", key, index];
      const found = `"${name}", expected one of ${practicals.join(", ")}`;
      return [{ ...source.placeOf(path), what: path.join(" > "), found, advice }];
    }),
  );
  return faults.length > 0 ? { faults } : { department: departmentOf(read.data) };
}
