/** A predictor's memory that outlives the run: for each part of a procedure a shelf, one file with what every sample has shown in it. */
import type { Memory } from "../../engine/bench/predictor.ts";
import type { Cache } from "./cache.ts";

/** Results kept in memory at a time; the shelf untouched for longest goes first, and comes back from its file. */
const MOST = 20_000;

interface Shelf {
  results: Map<string, unknown>;
  /** Something was added since it was read. */
  grown: boolean;
}

/** @param name tells the memories of one cache apart */
export function keptMemory<T>(cache: Cache, name: string): Memory<T> & { keep(): void } {
  const shelves = new Map<string, Shelf>();
  let held = 0;

  const read = (part: string) => cache.read<Map<string, unknown>>(name, part) ?? new Map<string, unknown>();
  const put = (part: string, shelf: Shelf) => {
    if (!shelf.grown) return;
    // Another worker may have added its own meanwhile; what both have is the same.
    cache.write(name, part, new Map([...read(part), ...shelf.results]));
    shelf.grown = false;
  };
  const shelfOf = (part: string): Shelf => {
    const known = shelves.get(part);
    const shelf = known ?? { results: read(part), grown: false };
    if (!known) held += shelf.results.size;
    shelves.delete(part);
    shelves.set(part, shelf);
    for (const [oldest, one] of shelves) {
      if (held <= MOST || oldest === part) break;
      put(oldest, one);
      held -= one.results.size;
      shelves.delete(oldest);
    }
    return shelf;
  };

  return {
    get: (part, sample) => shelfOf(part).results.get(sample) as T | undefined,
    set: (part, sample, value) => {
      const shelf = shelfOf(part);
      shelf.results.set(sample, value);
      shelf.grown = true;
      held += 1;
    },
    keep: () => {
      for (const [part, shelf] of shelves) put(part, shelf);
    },
  };
}
