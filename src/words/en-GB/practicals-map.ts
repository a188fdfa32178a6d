/** The map of the practicals: which tests and ions each exercises. */

export const TITLE = "Map of the practicals";
export const ABOUT = "Which tests and which ions each practical exercises.";
export const ALL_PRACTICALS = "All practicals";
export const LEAD =
  "Which tests each practical exercises, and which ions its paper offers; not which ions are in its samples. Use it to find practice in what you are unsure of.";
export const BY_PRACTICAL = "By practical";
export const BY_PRACTICAL_CAPTION = "Tests and ions of each practical";
export const HEADS = { practical: "Practical", tests: "Tests", cations: "Cations on offer", anions: "Anions on offer" };
/** Behind its title; `level` is one of those of the walkthroughs. */
export const aboutPractical = (level: string, lines: number) => `, ${level}, ${lines} lines to record`;
export const BY_TEST = "By test";
export const BY_TEST_CAPTION = "Practicals that exercise each test";
export const TEST_HEADS = { test: "Test", practicals: "Practicals" };
export const NONE_YET = "none yet";
export const BY_ION = "By ion";
export const BY_ION_CAPTION = "Practicals whose paper offers each ion";
export const ION_HEADS = { ion: "Ion", practicals: "On offer in practical" };
