/** What a class's sheet says of making up, of limits of strength and of first aid; worked out at build. */

/** A sentence of the constants as this language says it. */
export const saidOnSheet = (text: string): string => text;
/** Where a hazard begins: "irritates skin and eyes from 0.13 mol/dm3 (0.5 %)". */
export const limitFrom = (words: string, molPerDm3: number, asPrinted: string) =>
  `${words} from ${molPerDm3} mol/dm3${asPrinted}`;
/** What something besides the tests is made up for. */
export const forIt = (what: string) => `For ${what}.`;
export const THIS_PAPER = "this paper";
export const smallPieceOf = (name: string) => `small piece of ${name}`;
export const asSolid = (name: string) => `${name}, solid`;
