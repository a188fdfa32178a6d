/** What a reader may choose for the order of work: what there is of each thing, within which bounds, and how it stands in an address. */
import { inLink, wholeNumber } from "#words/found.ts";
import { ENTRIES } from "#words/order.ts";
import type { Rinsed, TubeWork } from "../../../engine/planning/order-of-work/bench-work.ts";
import type { Hands } from "../../../engine/planning/order-of-work/order-of-work.ts";
import { lasting, QUARTERS } from "../../../engine/planning/order-of-work/quarter-minutes.ts";
import { foundText } from "../../found-text.ts";

/** Names of the entries in an address. */
export type Entry = "people" | "burners" | "test-tubes" | "boiling-tubes" | "places" | "planning" | "minutes" | "free";

/** `usual` is what the page is built with, and is left out of the address. */
export interface Bounds {
  least: number;
  most: number;
  usual: number;
}

/** Entries that make a difference for this paper, in the order in which they are shown. */
export type Offer = Partial<Record<Entry, Bounds>>;
/** A number for each entry of the offer; `free` is 1 where parts may change places. */
export type Choice = Partial<Record<Entry, number>>;

/** As a practical's own time: practical.ts. */
const ALLOWED = { least: 5, most: 300 };
const LONGEST_PLANNING = 60;

type Work = readonly { turns: readonly { burner: boolean }[]; tubes?: TubeWork["tubes"] }[];

/** @param allowed minutes the paper allows */
export function offerOf(work: Work, allowed: number): Offer {
  const hot = work.some(({ turns }) => turns.some(({ burner }) => burner));
  const counts = (kind?: Rinsed) =>
    work.flatMap(({ tubes }) => (tubes && (kind === undefined || tubes.kind === kind) ? [tubes.count] : []));
  const upToAll = (of: readonly number[]): Bounds | undefined => {
    const all = of.reduce((sum, count) => sum + count, 0);
    const least = Math.max(0, ...of);
    return all > least ? { least, most: all, usual: all } : undefined;
  };
  const offer: Offer = {
    people: { least: 1, most: 2, usual: 1 },
    burners: hot ? { least: 1, most: 2, usual: 1 } : undefined,
    "test-tubes": upToAll(counts("test-tube")),
    "boiling-tubes": upToAll(counts("boiling tube")),
    places: upToAll(counts()),
    planning: { least: 0, most: LONGEST_PLANNING, usual: lasting("plan") / QUARTERS },
    minutes: { ...ALLOWED, usual: allowed },
    free: { least: 0, most: 1, usual: 0 },
  };
  return Object.fromEntries(Object.entries(offer).filter(([, bounds]) => bounds !== undefined));
}

export const entriesOf = (offer: Offer): Entry[] => Object.keys(offer) as Entry[];

export const usualChoice = (offer: Offer): Choice =>
  Object.fromEntries(entriesOf(offer).map((entry) => [entry, offer[entry]?.usual]));

/** What the order of work is made for. As many tubes or places as there are tests are as good as any number. */
export function handsOf(choice: Choice, offer: Offer): Hands {
  const fewer = (entry: Entry) => (choice[entry] === offer[entry]?.usual ? undefined : choice[entry]);
  const [test, boiling, places] = [fewer("test-tubes"), fewer("boiling-tubes"), fewer("places")];
  return {
    people: choice.people ?? 1,
    burners: choice.burners ?? 1,
    tubes: { ...(test && { "test-tube": test }), ...(boiling && { "boiling tube": boiling }) },
    ...(places && { places }),
    planning: choice.planning,
    partsInOrder: choice.free !== 1,
  };
}

/** Reads what somebody typed, or a link carries. @returns the number, or a sentence on what is wrong */
export function readEntry(entry: Entry, text: string, { least, most }: Bounds): number | { fault: string } {
  const typed = text.trim();
  const value = /^\d{1,3}$/.test(typed) ? Number(typed) : Number.NaN;
  if (value >= least && value <= most) return value;
  return { fault: wholeNumber(ENTRIES[entry], foundText(text), least, most) };
}

/** Reads the part after "?". What cannot be read is left as the page has it, and said. */
export function fromAddress(search: string, offer: Offer): { choice: Choice; faults: string[] } {
  const asked = new URLSearchParams(search);
  const faults: string[] = [];
  const choice = usualChoice(offer);
  for (const entry of entriesOf(offer)) {
    const text = asked.get(entry);
    const bounds = offer[entry];
    if (text === null || !bounds) continue;
    const read = readEntry(entry, text, bounds);
    if (typeof read === "number") choice[entry] = read;
    else faults.push(inLink(read.fault));
  }
  return { choice, faults };
}

/** The part after "?"; empty for the page's own choice. @param before what stood there: entries of other names are kept */
export function toAddress(choice: Choice, offer: Offer, before = ""): string {
  const entries = new URLSearchParams(before);
  for (const entry of entriesOf(offer)) {
    if (choice[entry] === undefined || choice[entry] === offer[entry]?.usual) entries.delete(entry);
    else entries.set(entry, String(choice[entry]));
  }
  return entries.toString();
}
