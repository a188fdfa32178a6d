/** What is wrong with a link that should hold a paper. */

export const codeTooLong = (letters: number, most: number) =>
  `Er ist ${letters} Zeichen lang; ein Link mit einer Aufgabe hat höchstens ${most}.`;
export const CUT_OFF =
  "Er ist beschädigt oder wurde abgeschnitten. Lass ihn dir noch einmal geben, und kopiere ihn ganz.";
export const unpacksTo = (kB: number) => `Entpackt hat er mehr als ${kB} kB; keine Aufgabe ist so lang.`;
export const NO_PAPER = "Was er enthält, ist keine Aufgabe. Lass ihn dir noch einmal geben, und kopiere ihn ganz.";
