/** The rack of a bench plan: tubes, labels, fill marks, and the choice of other tubes. Volumes come as text, without their unit. */

export const CAPTION = "Tubes, labels and fill marks";
export const HEADS = { label: "Write on", tube: "Tube", marks: "Marks, from the bottom" };
/** Before the marks, on a phone. */
export const MARKS = "Marks";
export const solidFirst = (grams: string) => `${grams} g of solid first`;
export const DOES_NOT_FIT = "does not fit";
export const at = (depth: string) => `at ${depth}`;
/** From the thinnest to the thickest wall, mm. */
export const between = (least: number, greatest: number) => `${least} to ${greatest}`;
export const neverAbove = (cm3: string) => `; when heated never above ${cm3} cm³`;
/** Beside the line that a heated tube is not filled above. */
export const NO_HIGHER = "no higher";

export const KINDS = {
  cold: "Test-tubes, kept cold",
  heated: "Boiling tubes, heated",
  hardGlass: "Hard-glass tubes",
};
/** A kind within a sentence. */
export const within = (kind: string) => kind.charAt(0).toLowerCase() + kind.slice(1);
/** The name of a size; the constants have it in English. */
export const tubeSize = (name: string): string => name;
/** What is added to reach a mark, of one sample and said once for all of them: "1 cm3 of K", "1 cm3 of the sample". */
export const ofAnySample = (what: string) => what.replace(/ of [A-Z]\d?\b/, " of the sample");

export const NOT_UNDERSTOOD = "Not understood.";
export const NOT_FETCHED = "The tube sizes in the link could not be fetched. Load the page again.";
export const ANOTHER_TUBE = "Take another tube.";
/** Why a tube will not do. @param most the tests may need; @param brim it holds; @param limit when heated */
export const tooFull = (most: string, brim: string) =>
  `the tests may need ${most} cm³, and this tube holds ${brim} cm³ to the brim.`;
export const tooFullToHeat = (most: string, limit: string) =>
  `the tests may need ${most} cm³; this tube is heated with at most ${limit} cm³.`;
export const tooFullToShake = (most: string, brim: string) =>
  `the tests may need ${most} cm³, too much to shake in a tube that holds ${brim} cm³.`;

/** Where the tubes stand. */
export const HOW_ROWS_ARE_READ =
  "Front row first, each row from left to right: the hand finds the tubes in the order of use.";
export const ROWS = {
  "test-tubes": "Test-tubes",
  "boiling tubes": "Boiling tubes",
  "hard-glass tubes": "Hard-glass tubes",
  "limewater tubes": "Limewater tubes",
};
/** Between the labels of tubes that stand in one place in turn. */
export const THEN = ", then ";
