/** The class a reader has chosen, in the address of the page: one entry for each figure that differs from the page's own. */
import { inLink } from "#words/found.ts";
import { type ClassEntry, type ClassSize, readEntry } from "../../engine/planning/class/class-size.ts";

/** What each entry is called in an address. */
const PARAMETERS: Readonly<Record<ClassEntry, string>> = {
  groups: "groups",
  sparePercent: "spare",
  sampleCm3: "sample",
  sampleG: "solid",
};

/** Entries this page has a field for. */
export const entriesOf = (size: ClassSize): ClassEntry[] =>
  (Object.keys(PARAMETERS) as ClassEntry[]).filter((entry) => size[entry] !== undefined);

/** Reads the part after "?". What cannot be read is left as the page has it, and said. */
export function fromAddress(search: string, own: ClassSize): { size: ClassSize; faults: string[] } {
  const asked = new URLSearchParams(search);
  const faults: string[] = [];
  const size = { ...own };
  for (const entry of entriesOf(own)) {
    const text = asked.get(PARAMETERS[entry]);
    if (text === null) continue;
    const read = readEntry(entry, text);
    if (typeof read === "number") size[entry] = read;
    else faults.push(inLink(`${read.fault}.`));
  }
  return { size, faults };
}

/** The part after "?"; empty for the page's own class. @param before what stood there: entries of other names are kept */
export function toAddress(size: ClassSize, own: ClassSize, before = ""): string {
  const entries = new URLSearchParams(before);
  for (const entry of entriesOf(own)) {
    if (size[entry] === own[entry]) entries.delete(PARAMETERS[entry]);
    else entries.set(PARAMETERS[entry], String(size[entry]));
  }
  return entries.toString();
}
