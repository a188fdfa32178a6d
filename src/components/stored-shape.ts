/**
 * Guards for what a browser has kept: each says whether a value has a shape. For a page that must stay light zod/mini weighs too much, eight
 * kilobytes for a handful of shapes; where a value comes from a file or an author, zod says what is wrong with it.
 */
export type Is<T> = (value: unknown) => value is T;
/** What a guard lets through. */
export type Guarded<G> = G extends Is<infer T> ? T : never;

export const wholeNumber =
  (least: number, most: number): Is<number> =>
  (value): value is number =>
    Number.isInteger(value) && (value as number) >= least && (value as number) <= most;

export const text =
  (most: number, like = /^/): Is<string> =>
  (value): value is string =>
    typeof value === "string" && value.length <= most && like.test(value);

export const oneOf =
  <const T extends string | number | boolean>(...values: T[]): Is<T> =>
  (value): value is T =>
    values.includes(value as T);

export const listOf =
  <T>(one: Is<T>, most: number): Is<T[]> =>
  (value): value is T[] =>
    Array.isArray(value) && value.length <= most && value.every(one);

const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Any keys of at most so many letters. */
export const byKey =
  <T>(one: Is<T>, longest: number): Is<Record<string, T>> =>
  (value): value is Record<string, T> =>
    isGroup(value) && Object.entries(value).every(([key, each]) => key.length <= longest && one(each));

/** Just these entries, the last group of which may be absent. */
export const shape =
  <G extends Record<string, Is<unknown>>, O extends Record<string, Is<unknown>>>(
    needed: G,
    optional: O = {} as O,
  ): Is<{ [K in keyof G]: Guarded<G[K]> } & { [K in keyof O]?: Guarded<O[K]> }> =>
  (value): value is { [K in keyof G]: Guarded<G[K]> } & { [K in keyof O]?: Guarded<O[K]> } =>
    isGroup(value) &&
    Object.entries(needed).every(([key, is]) => Object.hasOwn(value, key) && is(value[key])) &&
    Object.entries(value).every(
      ([key, each]) => Object.hasOwn(needed, key) || (Object.hasOwn(optional, key) && optional[key](each)),
    );
