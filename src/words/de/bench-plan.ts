/** The rack of a bench plan: tubes, labels, fill marks, and the choice of other tubes. Volumes come as text, without their unit. */

export const CAPTION = "Reagenzgläser, Beschriftung und Füllmarken";
export const HEADS = { label: "Aufschrift", tube: "Glas", marks: "Marken, vom Boden an" };
/** Before the marks, on a phone. */
export const MARKS = "Marken";
export const solidFirst = (grams: string) => `zuerst ${grams} g Feststoff`;
export const DOES_NOT_FIT = "passt nicht hinein";
export const at = (depth: string) => `bei ${depth}`;
/** From the thinnest to the thickest wall, mm. */
export const between = (least: number, greatest: number) => `${least} bis ${greatest}`;
export const neverAbove = (cm3: string) => `; beim Erhitzen nie über ${cm3} cm³`;
/** Beside the line that a heated tube is not filled above. */
export const NO_HIGHER = "nicht höher";

export const KINDS = {
  cold: "Reagenzgläser, kalt",
  heated: "Große Reagenzgläser, erhitzt",
  hardGlass: "Gläser aus Hartglas",
};
/** A kind within a sentence. */
export const within = (kind: string) => kind;
const NAMES: readonly [english: RegExp, german: string][] = [
  [/^test-tube/, "Reagenzglas"],
  [/^boiling tube/, "großes Reagenzglas"],
  [/^hard-glass tube/, "Hartglas"],
  [/ or /, " oder "],
];
/** The name of a size; the constants have it in English. */
export const tubeSize = (name: string): string => NAMES.reduce((text, [from, to]) => text.replace(from, to), name);
/** What is added to reach a mark, of one sample and said once for all of them: "1 cm3 von K", "1 cm3 der Probe". */
export const ofAnySample = (what: string) => what.replace(/ von [A-Z]\d?\b/, " der Probe");

export const NOT_UNDERSTOOD = "Nicht verstanden.";
export const NOT_FETCHED = "Die Glasgrößen aus dem Link ließen sich nicht laden. Lade die Seite neu.";
export const ANOTHER_TUBE = "Nimm ein anderes Glas.";
/** Why a tube will not do. @param most the tests may need; @param brim it holds; @param limit when heated */
export const tooFull = (most: string, brim: string) =>
  `die Versuche brauchen bis zu ${most} cm³, und dieses Glas fasst bis zum Rand ${brim} cm³.`;
export const tooFullToHeat = (most: string, limit: string) =>
  `die Versuche brauchen bis zu ${most} cm³; dieses Glas wird mit höchstens ${limit} cm³ erhitzt.`;
export const tooFullToShake = (most: string, brim: string) =>
  `die Versuche brauchen bis zu ${most} cm³, zu viel zum Schütteln in einem Glas, das ${brim} cm³ fasst.`;

/** Where the tubes stand. */
export const HOW_ROWS_ARE_READ =
  "Vordere Reihe zuerst, jede Reihe von links nach rechts: So findet die Hand die Gläser in der Reihenfolge, in der sie gebraucht werden.";
export const ROWS = {
  "test-tubes": "Reagenzgläser",
  "boiling tubes": "Große Reagenzgläser",
  "hard-glass tubes": "Gläser aus Hartglas",
  "limewater tubes": "Gläser mit Kalkwasser",
};
/** Between the labels of tubes that stand in one place in turn. */
export const THEN = ", dann ";
