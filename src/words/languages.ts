/** Every language the interface is written in. For the tests: a page takes the words of one language only, as `#words/...`. */
import type { Catalogue } from "./catalogue.ts";
import * as de from "./de/index.ts";
import * as en from "./en-GB/index.ts";

export const CATALOGUES = { "en-GB": en, de } as const satisfies Record<string, Catalogue>;
