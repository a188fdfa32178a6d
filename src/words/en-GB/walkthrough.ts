/** The page of a walkthrough around its five parts, and practicals in lists. */

export const LEVELS = { foundation: "foundation", core: "core", stretch: "for a stretch" };
const samples = (count: number) => (count === 1 ? "one sample" : `${count} samples`);
/** Under a practical in a list; `level` is one of LEVELS. */
export const aboutPractical = (level: string, minutes: number, count: number) =>
  `${level} · ${minutes} minutes · ${samples(count)}`;
export const practicalNumber = (order: number) => `Practical ${order}`;

export const BEFORE_YOU_BEGIN = "Before you begin";
export const TAKE_CARE = "Take care.";
export const GOGGLES =
  "Goggles on from the first bottle to the last rinsed tube. Your teacher and your school's rules come first.";
export const PARTS_OF_THE_JOB = "Parts of the job";
export const PARTS = {
  read: "Read",
  prepare: "Prepare",
  "carry-out": "Carry out",
  record: "Record",
  conclude: "Conclude",
};
/** A link, and what it leads to. */
export const PRACTISE = "Practise these tests blind";
export const PRACTISE_ABOUT = ": other salts, drawn by a number that a class can share, with a mark for each line.";
export const TAKE_AWAY = "Take this walkthrough away";
export const TAKE_AWAY_ABOUT =
  ": one file that opens without a network and without the course, record and conclusion included.";

/** The quiet line for those who prepare it, its links between. */
export const TEACHERS = {
  for: "For teachers and technicians:",
  link: "a link for a class",
  thenNaming: ", with its QR code; and three that name salts,",
  unknowns: "choose unknowns",
  class: "preparation sheet for a class",
  marks: "mark sheet",
};
