/** What a schema refuses in a file of YAML, as faults with their places. */
import type { z } from "zod";
import type { ContentFault } from "../authoring/faults.ts";
import type { YamlSource } from "../authoring/yaml-source.ts";
import { describe } from "../engine/practical/amount.ts";

/** @param whole what the file as a whole is called, where no entry is meant */
export function schemaFaults(source: YamlSource, error: z.ZodError, whole: string, advice: string): ContentFault[] {
  const faultAt = (path: readonly (string | number)[], message: string): ContentFault => ({
    ...source.placeOf(path),
    what: path.join(" > ") || whole,
    found: message.replace(/^found /, ""),
    advice,
  });
  const faults = error.issues.flatMap((issue) => {
    const path = issue.path as (string | number)[];
    if (issue.code !== "unrecognized_keys") return [faultAt(path, issue.message)];
    // Each has a place of its own.
    const all = issue.keys.map(describe).join(", ");
    return issue.keys.map((key) => {
      const message = issue.message.replace(all, () => describe(key));
      return faultAt([...path, key], message);
    });
  });
  return faults.sort((a, b) => a.line - b.line || a.column - b.column);
}
