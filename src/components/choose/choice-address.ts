/**
 * What a teacher has chosen, in the address of the page, so that a link shows it again: the salts ticked, by their formulas, and the number
 * of samples; only what differs from the page as built.
 */
import * as say from "#words/choose.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";

/** Salts by index, in the order of the table. */
export interface Chosen {
  store: number[];
  samples: number;
}

/** A salt's formula never holds one. */
const BETWEEN = ",";

/**
 * The part of an address after "?"; empty for the page as built.
 * @param before what stood there: entries that belong to somebody else are kept
 */
export function toAddress({ salts }: PredictionTable, usual: Chosen, chosen: Chosen, before = ""): string {
  const entries = new URLSearchParams(before);
  entries.delete("store");
  entries.delete("samples");
  if (chosen.store.join() !== usual.store.join())
    entries.set("store", chosen.store.map((salt) => salts[salt].formula).join(BETWEEN));
  if (chosen.samples !== usual.samples) entries.set("samples", `${chosen.samples}`);
  return entries.toString();
}

/** Longer than the formulas of any store; more is not read. */
const LONGEST = 4_000;
/** So much of what cannot be read is quoted. */
const QUOTED = 40;

const quote = (text: string): string => say.quote(text.length > QUOTED ? `${text.slice(0, QUOTED)}…` : text);

/**
 * Reads such a part of an address. What cannot be read is left as the page has it, or left out, and said.
 * @param possible salts (indices) that can be ticked
 */
export function fromAddress(
  { salts }: PredictionTable,
  usual: Chosen,
  possible: readonly number[],
  most: number,
  search: string,
): Chosen & { faults: string[] } {
  if (search.length > LONGEST)
    return {
      ...usual,
      faults: [say.linkTooLong(search.length, LONGEST)],
    };
  const entries = new URLSearchParams(search);
  const faults: string[] = [];
  const asked = entries.get("samples");
  const count = Number(asked);
  const fits = asked !== null && Number.isInteger(count) && count >= 1 && count <= most;
  if (asked !== null && !fits) faults.push(say.badSamples(quote(asked), most));
  const named = entries
    .get("store")
    ?.split(BETWEEN)
    .filter((formula) => formula !== "");
  const unknown = named?.filter((formula) => !possible.some((salt) => salts[salt].formula === formula)) ?? [];
  if (unknown.length > 0) faults.push(say.badStore(quote(unknown.join(BETWEEN))));
  return {
    store: named ? possible.filter((salt) => named.includes(salts[salt].formula)) : usual.store,
    samples: fits ? count : usual.samples,
    faults,
  };
}
