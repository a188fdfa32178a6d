/** What the reader has practised, in this browser. */

export const MARK = "I have practised this";
export const NOT_MARKED = "Not marked: check the connection and load the page again.";
export const NOT_KEPT = "Your browser does not keep this: its storage is switched off or full.";
export const SAVE = "Save my marks as a file";
export const FORGET = "Forget my marks";
export const FORGOTTEN = "Forgotten.";
export const NOT_FORGOTTEN = "Your browser refused: clear its data for this site instead.";

const times = (count: number): string => (count === 1 ? "once" : count === 2 ? "twice" : `${count} times`);
/** "You have practised this twice, last on 30 November 2026; at best 9 of 12 marks." */
export const practised = (count: number, last: string, best: { earned: number; of: number } | undefined) =>
  `You have practised this ${times(count)}, last on ${last}${best ? `; at best ${best.earned} of ${best.of} marks` : ""}.`;
