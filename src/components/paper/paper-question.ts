/**
 * What the page asks of the worker, and a look at it there. By hand, as for the answers: the page is this site's own. A paper goes as it is
 * written, and is read by the one schema in the worker.
 */
import type { CautionEntry } from "./paper-work.types.ts";

export type Question = { id: number } & (
  | { do: "work out"; written: unknown; cautions: CautionEntry[] }
  | { do: "read sentences"; pasted: string }
  | { do: "check" | "order"; written: unknown }
  | { do: "look further"; written: unknown; cautions: CautionEntry[]; left: Record<string, string[]> }
);

/** Longest text that is read as sentences, in letters. */
export const LONGEST_PASTED = 20_000;

const isGroup = (input: unknown): input is Record<string, unknown> => typeof input === "object" && input !== null;
const isText = (input: unknown): input is string => typeof input === "string";
const isTexts = (input: unknown): boolean => Array.isArray(input) && input.every(isText);
const isCaution = (input: unknown): boolean =>
  isGroup(input) &&
  isText(input.id) &&
  isGroup(input.data) &&
  [input.data.title, input.data.summary, input.data.kind].every(isText) &&
  isTexts(input.data.covers);
const areCautions = (input: unknown): boolean => Array.isArray(input) && input.every(isCaution);

const KINDS: { [Kind in Question["do"]]: (asked: Record<string, unknown>) => boolean } = {
  "work out": ({ cautions }) => areCautions(cautions),
  "read sentences": ({ pasted }) => isText(pasted) && pasted.length <= LONGEST_PASTED,
  check: () => true,
  order: () => true,
  "look further": ({ cautions, left }) => areCautions(cautions) && isGroup(left) && Object.values(left).every(isTexts),
};

/** @throws TypeError when it is no question, which reaches the page as the worker's error */
export function readQuestion(input: unknown): Question {
  const isQuestion =
    isGroup(input) &&
    Number.isInteger(input.id) &&
    isText(input.do) &&
    Object.hasOwn(KINDS, input.do) &&
    KINDS[input.do as Question["do"]](input);
  if (!isQuestion) throw new TypeError("found a message that is no question on a paper");
  return input as unknown as Question;
}
