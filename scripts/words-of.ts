/** Which words a bundle holds: `#words/record.ts` is that file of one language. Node takes the same from `imports` in package.json. */
import { resolve } from "node:path";
import type { Language } from "../src/words/tags.ts";

export const wordsOf = (language: Language): { find: RegExp; replacement: string }[] => [
  { find: /^#words\//, replacement: `${resolve(import.meta.dirname, "../src/words", language)}/` },
];
