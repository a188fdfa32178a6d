/** Pages about one practical besides its walkthrough, and the list of all. */

export const LIST = "Practicals";
export const LIST_ABOUT = "Walkthroughs of salt-analysis practicals, in the order of the course.";
/** The link stands after the first sentence's two parts. */
export const LIST_LEAD = [
  "In the order of the course: the first ones ask little, the last ones ask for judgement. The",
  "map",
  "shows which tests and ions each exercises, and what you have practised.",
] as const;
export const PRACTISE_BLIND = "Practise it blind";

export const BACK_TO_WALKTHROUGH = "Back to the walkthrough";
/** Title and description of each page. */
export const unknowns = (practical: string) => `Choose unknowns: ${practical}`;
export const unknownsAbout = (practical: string) =>
  `For teachers: sets of salts that the tests of "${practical}" decide, and how hard each is.`;
export const sheet = (practical: string) => `Preparation sheet: ${practical}`;
export const sheetAbout = (practical: string) =>
  `What a technician makes ready for a class doing "${practical}". It names the salts.`;
export const order = (practical: string) => `Order of work: ${practical}`;
export const orderAbout = (practical: string) => `What is done when at the bench in "${practical}".`;
export const practice = (practical: string) => `Practise blind: ${practical}`;
export const practiceAbout = (practical: string) =>
  `Unknown salts drawn by a number, for the tests of "${practical}": record what you see, conclude, and be marked with reasons.`;

/** Choose unknowns. */
export const FOR_TEACHERS = "For teachers.";
export const NAMES_SALTS = "This page names the salts of the walkthrough.";
export const UNKNOWNS_LEAD =
  "Which salts can a class be given for these tests? A set is decided when the record a class would write of it fits no other salts that the paper allows, whether you have them or not. Strengths, amounts and forms are those of the walkthrough.";
export const OWN_SET = "The walkthrough's own set";
export const WHAT_YOU_HAVE = "What you have";
export const UNKNOWNS_NEED_SCRIPT = "Choosing needs JavaScript; below are the sets from a school store's usual salts.";
export const JUDGED = "How it is judged";
export const JUDGED_ABOUT =
  "One misread observation is one place of the record that another salt would have shown differently. A test that would settle a set is named only where it does so even if a prediction on the border falls the other way; the paper's own tests on another sample come first. Mixing up two samples is no slip that these figures count.";
export const notLookedAt = (test: string, why: string) => `Not looked at as a further test, ${test}: ${why}.`;
export const STORE_HAZARDS =
  "Hazards are those of the store's list behind this site, many from memory: your supplier's data and your school's own rules come first. A salt with nothing said of it is not therefore harmless.";

/** Order of work. */
export const ORDER_LEAD =
  "While one tube stands, cools or drips, another is worked on. The minutes are those of somebody who has done such tests before; a first time takes longer. Nothing here is worth a burn: slow down rather than leave a flame or a hot tube alone.";
export const SPOIL = "What could spoil an observation";
export const parts = (letters: string, several: boolean) => `${several ? "Parts" : "Part"} ${letters}`;
export const LASTS = "How long each thing is taken to last";
export const LASTS_ABOUT =
  "Planning figures of the trade, in minutes, chosen so that whole tests take what is usually planned for them. They rest on no published measurement: take your own where you know them.";
export const LASTS_HEADS = { what: "What", minutes: "Minutes", source: "Rests on" };

/** Practise blind. */
export const PRACTICE_LEAD =
  "The tests are those of the walkthrough, the salts are others, drawn by a number. Look at each tube, write what you see in your own words, and only then see the model wording, with a mark for each thing and the reason where one is lost. At the end you conclude, and see whether your own record would have led you there.";
export const PRACTICE_SHARED =
  "A teacher can share a number: whoever enters it gets the same unknowns. What you write stays in this browser and goes nowhere; a page closed by mistake goes on where it was.";
export const BEFORE_YOU_BEGIN = "Before you begin";
export const TAKE_CARE = "Take care.";
export const DRAWN_TUBES =
  "Here the tubes are drawn. With real ones: goggles on, and your teacher and your school's rules come first.";
