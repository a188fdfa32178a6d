/** The map of the practicals: which tests and ions each exercises. */

export const TITLE = "Übersicht der Versuche";
export const ABOUT = "Welche Nachweise und welche Ionen jeder Versuch übt.";
export const ALL_PRACTICALS = "Alle Versuche";
export const LEAD =
  "Welche Nachweise jeder Versuch übt und welche Ionen seine Aufgabe zur Wahl stellt; nicht, welche Ionen in seinen Proben sind. Finde damit Übung in dem, worin du unsicher bist.";
export const BY_PRACTICAL = "Nach Versuchen";
export const BY_PRACTICAL_CAPTION = "Nachweise und Ionen jedes Versuchs";
export const HEADS = {
  practical: "Versuch",
  tests: "Nachweise",
  cations: "Kationen zur Wahl",
  anions: "Anionen zur Wahl",
};
/** Behind its title; `level` is one of those of the walkthroughs. */
export const aboutPractical = (level: string, lines: number) => `, ${level}, ${lines} Zeilen zu protokollieren`;
export const BY_TEST = "Nach Nachweisen";
export const BY_TEST_CAPTION = "Versuche, die jeden Nachweis üben";
export const TEST_HEADS = { test: "Nachweis", practicals: "Versuche" };
export const NONE_YET = "noch keiner";
export const BY_ION = "Nach Ionen";
export const BY_ION_CAPTION = "Versuche, deren Aufgabe jedes Ion zur Wahl stellt";
export const ION_HEADS = { ion: "Ion", practicals: "Zur Wahl in Versuch" };
