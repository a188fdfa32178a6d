/** A paper written as the file of a practical. Entries that only its author can fill in are marked, and the build refuses them as they are. */
import * as say from "#words/paper-files.ts";
import type { Draft } from "./draft.ts";
import { written } from "./draft.ts";

/** What stands for a salt that is not certain: no formula, so that the build names the place. */
export const NOT_KNOWN = "?";

/** Words YAML would read as something else than text. */
const NOT_TEXT = /^(?:true|false|null|yes|no|on|off|y|n|~)$/i;
/** Text that can stand without quotes inside braces. */
const PLAIN = /^[A-Za-z0-9][A-Za-z0-9 ()./+^*-]*$/;

function scalar(value: unknown): string {
  if (typeof value !== "string") return JSON.stringify(value);
  const plain = PLAIN.test(value) && !NOT_TEXT.test(value) && Number.isNaN(Number(value)) && value === value.trim();
  return plain ? value : JSON.stringify(value);
}

/** One value on one line. */
function flow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flow).join(", ")}]`;
  if (typeof value !== "object" || value === null) return scalar(value);
  const entries = Object.entries(value).map(([key, one]) => `${scalar(key)}: ${flow(one)}`);
  return `{ ${entries.join(", ")} }`;
}

type Group = Record<string, unknown>;
const group = (value: unknown): Group => value as Group;
const list = (value: unknown): Group[] => (value ?? []) as Group[];

const DEFAULT_MINUTES = 60;

/**
 * @param certain formulas of the samples whose salt the record decides
 * @example writeFile(draft, { K: "ZnSO4" })
 */
export function writeFile(draft: Draft, certain: Readonly<Record<string, string>>): string {
  const paper = written(draft);
  const record = group(paper.record ?? {});
  const title = draft.title.trim().length >= 3 ? draft.title.trim() : say.TITLE;
  const lines = [
    "---",
    `title: ${JSON.stringify(title)}`,
    `summary: ${JSON.stringify(say.SUMMARY)}`,
    `level: core # ${say.LEVEL_IS}`,
    `minutes: ${scalar(paper.minutes ?? DEFAULT_MINUTES)}`,
    `order: 99 # ${say.ORDER_IS}`,
    "samples:",
    ...list(paper.samples).map((one) => {
      const letter = String(one.label);
      const salt = Object.hasOwn(certain, letter) ? certain[letter] : undefined;
      const note = salt === undefined ? ` # ${say.ANSWER_IS}` : "";
      return `  - ${flow({ ...one, salt: salt ?? NOT_KNOWN })}${note}`;
    }),
    "paper:",
    ...Object.entries(group(paper.paper)).flatMap(([key, value]) =>
      Array.isArray(value) && typeof value[0] === "object" && !Array.isArray(value[0])
        ? [`  ${key}:`, ...value.map((one) => `    - ${flow(one)}`)]
        : [`  ${key}: ${flow(value)}`],
    ),
    ...(list(paper.parts).length > 0 ? ["parts:"] : ["parts: []"]),
    ...list(paper.parts).flatMap((part) => {
      const { tests, ...rest } = part;
      const [first, ...more] = Object.entries(rest).map(([key, value]) => `${key}: ${flow(value)}`);
      return [
        `  - ${first}`,
        ...more.map((line) => `    ${line}`),
        "    tests:",
        ...list(tests).flatMap((test) => {
          const steps = list(test.steps).map((step) => `          - ${flow(step)}`);
          const says = test.says === undefined ? [] : [`says: ${JSON.stringify(test.says)}`];
          return says.length > 0
            ? [`      - ${says[0]}`, ...stepsUnder("        ", steps)]
            : [`      - ${stepsUnder("", steps)[0]}`, ...stepsUnder("", steps).slice(1)];
        }),
      ];
    }),
    ...(Object.keys(record).length > 0 ? ["record:"] : [`record: {} # ${say.RECORD_IS}`]),
    ...Object.entries(record).flatMap(([letter, row]) => [
      `  ${scalar(letter)}:`,
      ...Object.entries(group(row)).map(([id, seen]) => `    ${scalar(id)}: ${flow(seen)}`),
    ]),
    "---",
    "",
    say.WRITE_HERE,
    "",
  ];
  return lines.join("\n");
}

const stepsUnder = (indent: string, steps: string[]): string[] =>
  steps.length > 0 ? [`${indent}steps:`, ...steps] : [`${indent}steps: []`];
