/** What a teacher chooses a class to see, and the link that shows it. */
import * as say from "#words/teacher-link.ts";
import { PARTS } from "#words/walkthrough.ts";
import { ASKED, CONCLUSION } from "./held-back.ts";

/** Where the page begins: a part of the job, or a part of the paper under Carry out. */
export interface Start {
  /** Name of the place in the page; empty for its head. */
  anchor: string;
  name: string;
}

export interface LinkChoice {
  opens: "walkthrough" | "practice";
  /** The walkthrough's own record, or none. */
  record: "filled" | "empty";
  /** Shown at once, or when the reader asks. */
  conclusion: "shown" | "asked";
  anchor: string;
  /** Of the draw of unknowns, for a practice. */
  seed: number;
}

const JOB: readonly Start[] = [
  { anchor: "", name: say.AT_HEAD },
  ...Object.entries(PARTS).map(([anchor, name]) => ({ anchor, name })),
];

/** Name of the place in a walkthrough where a part of the paper is carried out. */
export const partAnchor = (label: string): string => `part-${label}`;

/** @param parts letters and titles of the paper's parts */
export const startsOf = (parts: readonly { label: string; title: string }[]): Start[] => [
  ...JOB,
  ...parts.map(({ label, title }) => ({ anchor: partAnchor(label), name: say.carryOutPart(label, title) })),
];

/**
 * The whole address to send.
 * @param walkthrough whole address of the walkthrough, ending in a slash
 */
export function linkFor({ opens, record, conclusion, anchor, seed }: LinkChoice, walkthrough: string): string {
  if (opens === "practice") return `${walkthrough}practice/?seed=${seed}`;
  const entries = new URLSearchParams();
  if (record === "empty") entries.set("record", "own");
  if (conclusion === "asked") entries.set(CONCLUSION, ASKED);
  const search = entries.toString();
  return `${walkthrough}${search && `?${search}`}${anchor && `#${anchor}`}`;
}

/** What a student who opens it sees, in a sentence. */
export function linkWords({ opens, record, conclusion, anchor, seed }: LinkChoice, starts: readonly Start[]): string {
  if (opens === "practice") return say.practiseSet(seed);
  const start = starts.find((one) => one.anchor === anchor);
  return say.opens(anchor === "" ? undefined : start?.name, record === "empty", conclusion === "asked");
}
