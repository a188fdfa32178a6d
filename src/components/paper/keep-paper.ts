/** A paper as a link and as a file, made in this browser when a reader asks for it; nothing is sent. */
import * as say from "#words/paper-files.ts";
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { findingOf } from "../conclude/finding.ts";
import { type Draft, sharedLetters, stored } from "./draft.ts";
import { LONGEST_CODE, toFragment } from "./paper-link.ts";
import type { PaperWork } from "./paper-work.types.ts";
import { writeFile } from "./write-file.ts";

/** What was made, and what the reader is told. */
export interface Kept {
  news: string;
  address?: string;
  text?: string;
}

export async function makeLink(draft: Draft): Promise<Kept> {
  let fragment: string;
  try {
    fragment = await toFragment(stored(draft));
  } catch {
    return { news: say.CANNOT_LINK };
  }
  if (fragment.length > LONGEST_CODE) return { news: say.TOO_LONG_FOR_LINK };
  const address = `${location.origin}${location.pathname}${fragment}`;
  return { address, news: await copied(address) };
}

/** @param work what was worked out of the paper as it stands; absent while it is not */
export async function makeFile(draft: Draft, work: PaperWork | undefined, record: TableRecord): Promise<Kept> {
  const [shared] = sharedLetters(draft.parts);
  if (shared !== undefined) {
    // A file names an observation by the letter of its part: of two such parts it would hold one.
    return { news: say.twoParts(shared) };
  }
  const text = writeFile(draft, work ? certainSalts(work, record) : {});
  save(text, fileName(draft.title));
  return { text, news: say.SAVED };
}

async function copied(text: string): Promise<string> {
  try {
    await navigator.clipboard.writeText(text);
    return say.COPIED;
  } catch {
    return say.COPY_BELOW;
  }
}

/** The salt of each sample that the record leaves just one. */
function certainSalts({ table, names }: PaperWork, record: TableRecord): Record<string, string> {
  const samples = findingOf({ table, names, record })?.conclusion.samples ?? [];
  return Object.fromEntries(
    samples.flatMap(({ sample, salts }) => (salts.length === 1 ? [[sample, table.salts[salts[0]].formula]] : [])),
  );
}

function save(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "text/markdown" }));
  const anchor = document.createElement("a");
  anchor.href = address;
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** "two-jars.mdx" */
const fileName = (title: string): string => {
  const plain = title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, 60)
    .replace(/^-|-$/g, "");
  return `${plain || "paper"}.mdx`;
};
