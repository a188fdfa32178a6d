/**
 * The catalogue of the interface: what it says, by room. English is written first and is the measure; every other language has all its entries,
 * of the same kind, or does not compile (`languages.ts`).
 */
import type * as english from "./en-GB/index.ts";

/** The same entries, whatever they say. */
export type Wording<T> = T extends string
  ? string
  : T extends (...given: infer Given) => infer Said
    ? (...given: Given) => Wording<Said>
    : T extends boolean | number | undefined | RegExp
      ? T
      : { readonly [Entry in keyof T]: Wording<T[Entry]> };

export type Catalogue = Wording<typeof english>;
