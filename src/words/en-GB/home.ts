/** The front door, and the page for an address that leads nowhere. */

export const DESCRIPTION =
  "Walkthroughs of school salt analysis, from an unlabelled tube to the ions in it. Every statement of chemistry is computed.";
export const WHICH_IONS = "Which ions are in the tube?";
export const ABOUT =
  "You are given a salt without a name and a list of tests. Some cloud the tube, some clear it again, one gives off a gas. At the end you say which cation and which anion it holds, and why it can be no other. These pages take you through that job.";
export const BEFORE_YOU_BEGIN = "Before you begin";
export const TAKE_CARE = "Take care.";
export const ONLY_IN_A_LABORATORY =
  "Do these tests only in a laboratory, with a teacher in charge. Their word and your school's rules come before anything written here.";
export const READ_CAUTIONS = "Read the cautions";

export const FIVE_PARTS = "The job, in five parts";
export const PARTS = [
  ["Read", "what is given, what the paper tells you, and what each test is for."],
  ["Prepare", "tubes, labels, fill marks, reagents, papers and splints, before the first bottle is opened."],
  ["Carry out", "the tests, one fresh tube at a time, with the cautions beside the steps."],
  ["Record", "what you saw, in words that earn the mark: colour, precipitate, in excess, a gas with its test."],
  ["Conclude", "which ions fit, which clash and where, what is still open, what to repeat."],
] as const;
export const HOW_WORKED_OUT = "How it is worked out";
export const CHANGE_ANY =
  "On every walkthrough you can change any observation. The conclusion is worked out again on your own machine, from what every allowed salt would show.";
export const PRACTICALS = "Practicals";
/** A link, and what it leads to. */
export const MAP = ["Map of the practicals", ": which tests and ions each exercises."] as const;

export const LOOK_UP = "To look things up";
export const TESTS = ["Tests", ": one page for each test, with what every ion shows in it."] as const;
export const IONS = [
  "Ions",
  ": one page for each ion, with what it shows in every test and what it is taken for.",
] as const;
/** The glossary is a link of its own, before the full stop. */
export const METHOD = [
  "Method",
  ": how to read a paper, prepare, record, conclude and manage time; and the",
  "glossary",
] as const;
export const CAUTIONS = ["Cautions", ": reagents, gases and operations that can hurt."] as const;
export const SEARCH = ["Search", ": all of it, by word, ion or reagent."] as const;

export const WHO_FOR = "Who it is for";
export const PEOPLE = [
  ["A student", "reads a walkthrough before the practical, or after it to see why."],
  ["A teacher", "sees which samples the tests really separate, and what a wrong observation leads to."],
  ["A technician", "finds tubes, volumes, what to set out, and the waste."],
  ["A department", "hosts the whole site as plain files. Nothing is sent anywhere, nobody is counted."],
] as const;

/** No page at this address. */
export const NO_PAGE = "No such page";
export const NO_PAGE_DESCRIPTION = "There is no page at this address.";
export const NO_VISIBLE_CHANGE = "No visible change";
export const MAY_HAVE_MOVED =
  "There is no page at this address. It may have moved, or the address may have lost a letter.";
export const ALL_PRACTICALS = "All practicals";
export const ALL_TESTS = "All ion tests";
export const TO_SEARCH = "Search";
