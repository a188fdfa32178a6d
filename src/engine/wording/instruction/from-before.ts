/** Words that speak of what was made before: "the solution from (b)", "the first portion", "the mixture". */
import type { ReadStretch } from "./stretch.ts";
import { lettersIn, PORTIONED } from "./which-sample.ts";

const FIRST = "(?:the first|one) (?:portion|part|half)|one (?:portion|part|half|tube)? ?of (?:the|these)";
/**
 * The words of a mark that go on with the tube in hand, with the mark it stands under where the paper names one: "the mixture from (a)", "1 cm
 * depth of the solution from (b)".
 */
export const GOES_ON = new RegExp(
  "^(?:\\w+ ){1,5}(?:[\\d.]+ (?:cm3|ml|cm[- ]depth) of )?(?:the|this|your) (?:\\w+ )?(?:mixture|filtrate|residue|precipitate|product|contents|(?<=resulting )\\w+|(?:solution|tube)(?= (?:from|in|of) (?:part |test )?\\())(?:[^(,]{0,30}\\(([a-z]|\\d{1,2})\\))?" +
    `|^to ${FIRST}`,
);

/** What was made under a mark of the paper. */
export const FROM_MARK = /\bfrom (?:part |test |step )?\(([a-z]|\d{1,2})\)/;
export const DIVIDES = /^(?:divide|split|separate)\b.*\b(?:portions?|parts?|tubes?|halves|half)\b/;
export const FIRST_PORTION = new RegExp(`\\b(?:${FIRST})\\b`);
const NEXT_PORTION =
  /\b(?:the |a |an)?(?:second|third|fourth|other|remaining|another|next|rest of the) ?(?:portions?|parts?|half|tube)\b/;

/** What is known of earlier tubes when a stretch is read. */
export interface Earlier {
  /** Marks under which the tube in hand has been worked on. */
  marks: readonly string[];
  /** Of these, those of which a portion was taken. */
  portioned: Set<string>;
  /** Something was made, and not only taken, before it was divided. */
  made: boolean;
}

/** Asks where a stretch takes of what the tube in hand no longer is. */
export function askWhichTube(
  text: string,
  words: string,
  read: ReadStretch,
  { marks, portioned, made }: Earlier,
): void {
  const from = FROM_MARK.exec(text)?.[1];
  if (
    from !== undefined &&
    /^(?:\w+ly )?(?:to|add|take|put|place|pour|use|warm|boil|heat|acidify|transfer)\b/.test(text)
  ) {
    if (!marks.includes(from)) read.questions.push(elsewhere(from));
    else if (portioned.has(from)) read.questions.push(again(from));
    else if (PORTIONED.test(text)) portioned.add(from);
    return;
  }
  if (!NEXT_PORTION.test(text) || lettersIn(words).length > 0) return;
  if (made || !read.takes) read.questions.push(ANOTHER_PORTION);
}

export const elsewhere = (mark: string) =>
  `This goes on with the tube of (${mark}), which is not the last one: enter its steps there.`;
const again = (mark: string) =>
  `This takes what (${mark}) left, and something has been added to that tube since: enter the steps of (${mark}) before these, in a part of their own.`;
const ANOTHER_PORTION =
  "This is another portion of what was made before: enter the steps that make it before these, in a part of their own.";
