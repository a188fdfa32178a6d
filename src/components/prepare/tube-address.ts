/** The tube sizes a reader has chosen, in the address of the page: one entry for each kind of tube that is not of the planned size. */
import { within } from "#words/bench-plan.ts";
import { inLinkOneOf } from "#words/found.ts";
import { foundText } from "../found-text.ts";
import type { TubeKind } from "./rack.ts";

type Kinds = readonly Pick<TubeKind, "name" | "sizes">[];

/** "test-tube-100x16" is size "100x16" of the entry "test-tube-size". */
const SIZE = /-(\d+x\d+)$/;
const entryOf = ({ sizes }: Kinds[number]): string => sizes[0].id.replace(SIZE, "-size");
const sizeIn = (id: string): string => SIZE.exec(id)?.[1] ?? id;

/**
 * Reads the part after "?". What cannot be read is left as the page has it, and said.
 * @param planned ids of the sizes the page is built with, by kind
 */
export function fromAddress(
  search: string,
  kinds: Kinds,
  planned: readonly string[],
): { chosen: string[]; faults: string[] } {
  const asked = new URLSearchParams(search);
  const faults: string[] = [];
  const chosen = kinds.map((kind, index) => {
    const text = asked.get(entryOf(kind));
    if (text === null) return planned[index];
    const size = kind.sizes.find(({ id }) => sizeIn(id) === text.trim());
    if (size) return size.id;
    const there = kind.sizes.map(({ id }) => sizeIn(id)).join(", ");
    faults.push(inLinkOneOf(within(kind.name), foundText(text), there));
    return planned[index];
  });
  return { chosen, faults };
}

/** The part after "?". @param before what stood there: entries of other names are kept */
export function toAddress(chosen: readonly string[], kinds: Kinds, planned: readonly string[], before: string): string {
  const entries = new URLSearchParams(before);
  kinds.forEach((kind, index) => {
    if (chosen[index] === planned[index]) entries.delete(entryOf(kind));
    else entries.set(entryOf(kind), sizeIn(chosen[index]));
  });
  return entries.toString();
}

/** Links of this page to the sheets that are printed take the choice along. */
export function toSheets(chosen: readonly string[], kinds: Kinds, planned: readonly string[]): void {
  for (const link of document.querySelectorAll<HTMLAnchorElement>('a[href*="/sheets/"]')) {
    link.search = toAddress(chosen, kinds, planned, link.search);
  }
}
