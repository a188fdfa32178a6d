/**
 * What a reader has practised, kept in their own browser and nowhere else: one entry of its storage for each practical, as JSON.
 *
 * - Key: `ionwright.practised.` and the practical's name, such as `ionwright.practised.salt-works`.
 * - Shape: `Practised`, with the number of its version. An entry of another shape or version is left alone and read as none.
 * - Life: made by the first `mark`, ended by `clear`; the occasions before the last hundred are forgotten.
 *
 * A browser may refuse its storage (private windows, a school's settings, no room left). Nothing here throws because of that: what is read
 * is then empty, and `mark` and `clear` say false, so that a page can tell its reader.
 */
import { type Guarded, listOf, oneOf, shape, text, wholeNumber } from "./stored-shape.ts";

const PREFIX = "ionwright.practised.";
const VERSION = 1;
/** Occasions kept of one practical. */
const MOST = 100;

const count = wholeNumber(0, Number.MAX_SAFE_INTEGER);

const isOccasion = shape(
  {
    /** Day, as 2026-11-30. */
    on: text(10, /^\d{4}-\d\d-\d\d$/),
    /** With the walkthrough, or blind with unknown samples. */
    how: oneOf("walkthrough", "blind"),
  },
  {
    /** Of the draw of unknowns. */
    seed: count,
    /** Marks earned, of how many. */
    marks: shape({ earned: count, of: count }),
  },
);

/** One time a practical was practised. */
export type Occasion = Guarded<typeof isOccasion>;

const isPractised = shape({
  version: oneOf(VERSION),
  practical: text(80, /./),
  /** The oldest first; one at least. */
  occasions: listOf(isOccasion, MOST),
});

/** All occasions of one practical. */
export type Practised = Guarded<typeof isPractised>;

/** The part of a browser's storage this needs. */
export type Store = Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">;

/** The browser's storage; undefined where it is refused. */
function ownStore(): Store | undefined {
  try {
    return globalThis.localStorage;
  } catch {
    return undefined;
  }
}

/** What `act` gives; `otherwise` when there is no storage or it refuses. */
function tolerant<T>(store: Store | undefined, act: (store: Store) => T, otherwise: T): T {
  if (!store) return otherwise;
  try {
    return act(store);
  } catch {
    return otherwise;
  }
}

/** @returns undefined when the practical has not been practised here, or its entry cannot be read */
export function read(practical: string, store = ownStore()): Practised | undefined {
  const kept = tolerant(store, (one) => one.getItem(PREFIX + practical), null);
  if (kept === null) return undefined;
  const found = asJson(kept);
  return isPractised(found) && found.occasions.length > 0 && found.practical === practical ? found : undefined;
}

function asJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Everything practised in this browser, by the names of the practicals. */
export function readAll(store = ownStore()): Practised[] {
  return practicalsIn(store)
    .flatMap((practical) => read(practical, store) ?? [])
    .sort((a, b) => a.practical.localeCompare(b.practical, "en-GB"));
}

const practicalsIn = (store: Store | undefined): string[] => tolerant(store, namesIn, []);

const namesIn = (store: Store): string[] =>
  Array.from({ length: store.length }, (_, index) => store.key(index) ?? "")
    .filter((key) => key.startsWith(PREFIX))
    .map((key) => key.slice(PREFIX.length));

/**
 * Adds an occasion.
 * @returns false when the browser does not keep it
 */
export function mark(practical: string, when: Occasion, store = ownStore()): boolean {
  const before = read(practical, store)?.occasions ?? [];
  const next: Practised = { version: VERSION, practical, occasions: [...before, when].slice(-MOST) };
  return tolerant(
    store,
    (one) => {
      one.setItem(PREFIX + practical, JSON.stringify(next));
      return true;
    },
    false,
  );
}

/**
 * Forgets one practical, or all of them, unreadable entries included.
 * @returns false when the browser refuses
 */
export function clear(practical?: string, store = ownStore()): boolean {
  return tolerant(
    store,
    (one) => {
      for (const name of practical === undefined ? namesIn(one) : [practical]) one.removeItem(PREFIX + name);
      return true;
    },
    false,
  );
}

/** Everything practised, as the text of a file a reader may keep. */
export const exportAll = (store = ownStore()): string =>
  `${JSON.stringify({ version: VERSION, practised: readAll(store) }, null, 2)}\n`;

/** The day of a moment where the reader is, as an occasion keeps it. */
export function dayOf(moment: Date): string {
  const two = (part: number) => String(part).padStart(2, "0");
  return `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
}
