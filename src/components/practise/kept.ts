/**
 * A practice under way, kept in the reader's own browser so that it goes on after the page is closed: one entry of its storage for each
 * practical, `ionwright.practice.<name>`, of the shape below. An entry of another shape or version is left alone and read as none. Where
 * storage is refused nothing is kept, and nothing else changes. What was finished is kept by `progress.ts`.
 */
import { GREATEST_SEED } from "../../engine/deduction/drawn-set.ts";
import { byKey, type Guarded, listOf, oneOf, shape, text, wholeNumber } from "../stored-shape.ts";

const PREFIX = "ionwright.practice.";
const VERSION = 1;

const line = text(300);
const cell = 20;

const isAnswer = shape({ ions: listOf(text(40), 2), because: listOf(text(cell), 60) });

const isSession = shape({
  version: oneOf(VERSION),
  seed: wholeNumber(1, GREATEST_SEED),
  /** The test being done; after the last one the conclusion. */
  at: wholeNumber(0, 200),
  /** Of that test: before it is carried out, while its tubes are looked at, when the model wording is shown. */
  stage: oneOf("before", "seen", "shown"),
  /** By test: what was expected. */
  expected: byKey(line, cell),
  /** By test, by sample: what was recorded. */
  lines: byKey(byKey(line, cell), cell),
  /** By sample: what was concluded, of each kind of ion. */
  answers: byKey(shape({ cations: isAnswer, anions: isAnswer }), cell),
  concluded: oneOf(true, false),
});

export type Session = Guarded<typeof isSession>;
export type Answer = Guarded<typeof isAnswer>;

/** Stands for an ion where the reader says that the tests leave it open. */
export const OPEN = "open";

export const begun = (seed: number): Session => ({
  version: VERSION,
  seed,
  at: 0,
  stage: "before",
  expected: {},
  lines: {},
  answers: {},
  concluded: false,
});

type Store = Pick<Storage, "getItem" | "setItem" | "removeItem">;

/** Null where the browser refuses its storage. */
function act<T>(use: (store: Store) => T, store?: Store): T | null {
  try {
    return use(store ?? localStorage);
  } catch {
    return null;
  }
}

/** @param tests how many there are: a place past the conclusion is none */
export function readSession(slug: string, tests: number, store?: Store): Session | undefined {
  return (
    act((one) => {
      const kept: unknown = JSON.parse(one.getItem(PREFIX + slug) ?? "null");
      return isSession(kept) && kept.at <= tests ? kept : undefined;
    }, store) ?? undefined
  );
}

/** @returns false when the browser does not keep it */
export const keepSession = (slug: string, of: Session, store?: Store): boolean =>
  act((one) => {
    one.setItem(PREFIX + slug, JSON.stringify(of));
    return true;
  }, store) ?? false;

export const clearSession = (slug: string, store?: Store): void => {
  act((one) => one.removeItem(PREFIX + slug), store);
};
