/**
 * The reader's record in the address of the page, so that a link shows it again: one entry for each observation that differs from the
 * walkthrough's, in the words of the list it was chosen from, "something else" and "not done" among them; or `record=own` and one for each
 * observation, for a record begun empty.
 */
import {
  cellFor,
  ELSE,
  givenTwice,
  linkTooLong,
  moreLikeThese,
  NOT_DONE,
  noSuchPlace,
  noSuchSight,
  nothingBehindMark,
  onlyUnderstood,
  quote as quoted,
} from "#words/record.ts";
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { SOMETHING_ELSE } from "../../engine/deduction/something-else.ts";
import { inWords } from "./in-words.ts";
import type { RecordSheet, SheetLine } from "./record-sheet.ts";

/** A record, and whether the reader began it empty. */
export interface Kept {
  record: TableRecord;
  own: boolean;
}

const OWN = "own";

/** "a(ii)" as it stands in an address: "a.ii". */
const inAddress = (cell: string): string => cell.replace(/\((\w+)\)/, ".$1");

/** Every place of the record, in the order of the samples. */
const places = (table: RecordSheet): { sample: string; cell: SheetLine }[] =>
  table.samples.flatMap(({ label: sample }) =>
    table.cells.filter((cell) => cell.samples.includes(sample)).map((cell) => ({ sample, cell })),
  );

/** What a place in the record is called in an address, or was meant to be: "R.a.ii", "r.a(ii)". Other entries belong to somebody else and are left alone. */
const PLACE = /^[A-Z]\w?[.(]/i;
/**
 * The part of an address after "?"; empty for the walkthrough's own record.
 * @param before what stood there: entries that belong to somebody else are kept
 */
export function toAddress(table: RecordSheet, given: TableRecord, { record, own }: Kept, before = ""): string {
  const entries = new URLSearchParams(before);
  for (const name of [...entries.keys()]) if (name === "record" || PLACE.test(name)) entries.delete(name);
  if (own) entries.set("record", OWN);
  for (const { sample, cell } of places(table)) {
    const reading = record[sample]?.[cell.id];
    if (reading === (own ? undefined : given[sample]?.[cell.id])) continue;
    entries.set(`${sample}.${inAddress(cell.id)}`, inWords(cell, reading));
  }
  return entries.toString();
}

/** Longer than any record; more is not read. */
const LONGEST = 20_000;
/** So much of what cannot be read is quoted, and so many faults are told. */
const QUOTED = 40;
const TOLD = 6;

const quote = (text: string): string => quoted(text.length > QUOTED ? `${text.slice(0, QUOTED)}…` : text);

/** Reads such a part of an address. What cannot be read is left as the walkthrough has it, and said, entry by entry. */
export function fromAddress(table: RecordSheet, given: TableRecord, search: string): Kept & { faults: string[] } {
  if (search.length > LONGEST)
    return {
      record: given,
      own: false,
      faults: [linkTooLong(search.length, LONGEST)],
    };
  const entries = new URLSearchParams(search);
  const asked = entries.getAll("record");
  const own = asked.length === 1 && asked[0] === OWN;
  const faults = asked.length > 1 ? [givenTwice("record", asked.length)] : [];
  if (asked.length === 1 && !own) faults.push(onlyUnderstood("record", quote(asked[0]), OWN));
  const record: TableRecord = structuredClone(own ? {} : given);
  const all = places(table);
  for (const name of new Set(entries.keys())) {
    if (!PLACE.test(name)) continue;
    const [words, ...again] = entries.getAll(name);
    const place = all.find(({ sample, cell }) => name === `${sample}.${inAddress(cell.id)}`);
    if (!place) {
      faults.push(noSuchPlace(name, sampleName(all)));
      continue;
    }
    const { sample, cell } = place;
    if (again.length > 0) {
      faults.push(givenTwice(cellFor(cell.id, sample), again.length + 1));
      continue;
    }
    const listed = cell.words.indexOf(words);
    const reading = listed >= 0 ? listed : words === ELSE ? SOMETHING_ELSE : undefined;
    if (reading === undefined && words !== NOT_DONE) {
      faults.push(noSuchSight(cellFor(cell.id, sample), quote(words)));
      continue;
    }
    const { [cell.id]: _, ...row } = record[sample] ?? {};
    record[sample] = reading === undefined ? row : { ...row, [cell.id]: reading };
  }
  const more = faults.length - TOLD;
  return { record, own, faults: more > 0 ? [...faults.slice(0, TOLD), moreLikeThese(more)] : faults };
}

/** A record written behind "#", where the page reads none; a heading of the page is left alone. */
export function behindTheMark(hash: string): string[] {
  if (!/^#(?:record|[A-Z][A-Z0-9]?\.[a-z][.ivx]*)=/.test(hash)) return [];
  return [nothingBehindMark(quote(hash))];
}

const sampleName = ([first]: ReturnType<typeof places>): string =>
  first ? `${first.sample}.${inAddress(first.cell.id)}` : "R.a";
