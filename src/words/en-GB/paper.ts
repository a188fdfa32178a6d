/** A paper of one's own: the page, the shelf of papers, how the work stands, what was read, the tests as instructions, the record. */
import type { Language } from "../tags.ts";

export const TITLE = "Your own paper";
export const DESCRIPTION =
  "Enter a paper of your own: what each test is for, the bench, the order of work, a record to fill in, and what follows from it.";
export const ABOUT =
  "Enter the paper in front of you: its samples, what it says of them, and its tests, step by step or by pasting its sentences. At once you have what each test is for, the bench, the order of work, a record to fill in, and what follows from it. Nothing you enter leaves this machine.";
export const BEFORE_YOU_BEGIN = "Before you begin";
export const TAKE_CARE = "Take care.";
export const COMES_FIRST =
  "Your teacher, your paper and your school's rules come before anything worked out here. Goggles on from the first bottle to the last rinsed tube.";
/** Where scripts are off, its links between. */
export const NO_SCRIPT = {
  read: "This page works your paper out in your browser, and for that it needs JavaScript, which is switched off. Without it you can read how the course does the job in any of its",
  practicals: "practicals",
  lookUp: ", look up what every ion shows under",
  tests: "ion tests",
  beware: ", and what to beware of under",
  cautions: "cautions",
};

export const JOB = "Parts of the job";
/** Each part of the job, and beside its heading in a few words. */
export const PARTS = {
  read: ["Read", "what the paper gives and asks"],
  prepare: ["Prepare", "before anything is opened"],
  "carry-out": ["Carry out", "one fresh tube for each sample in each part"],
  record: ["Record", "what you see, in words that earn the mark"],
  conclude: ["Conclude", "from this record and what the paper says"],
  keep: ["Keep", "nothing leaves this machine"],
} as const;
export const KEEP_AND_SHARE = "Keep and share";

/** How the work stands. */
export const WORKING = "Working it out …";
export const WORKED_OUT = "Worked out.";
export const WHEN_A_TEST_IS_WHOLE =
  "This follows as soon as one test is whole: what is missing is marked at its steps.";
export const WHEN_THERE_IS_A_TEST = "This follows as soon as the paper has a test.";
export const notFinished = (count: number) =>
  `${count === 1 ? "One entry is" : `${count} entries are`} not finished, and left out of what follows.`;
/** @param last what stands near a limit is being looked for */
export const progress = (last: boolean, done: number, of: number) =>
  `${last ? "Looking for what stands near a limit" : "Carrying the tests out on each salt"}: ${done} of ${of}`;
export const BENCH_NOT_FETCHED = "The bench plan could not be fetched. Load the page again.";
export const DRAWING_BENCH = "Drawing the bench …";
export const CONCLUSION_NOT_FETCHED = "The conclusion could not be fetched. Your record is kept; load the page again.";
export const NOTHING_RECORDED = "Nothing is recorded yet.";
export const NOT_LOADED =
  "The calculation could not be loaded. What you typed is kept; check the connection and load the page again.";
/** A part of the page that is fetched when it is opened. */
export const PART_NOT_FETCHED = "This part could not be fetched. Check the connection and load the page again.";

/** The shelf. */
export const KEPT_HERE = "Papers kept here:";
export const A_NEW_PAPER = "a new paper";
export const NEW_PAPER = "New paper";
export const EMPTY_IS_OPEN = "An empty paper is open.";
export const openNow = (name: string) => `Open now: ${name}.`;
export const FROM_EXAMPLE = "Start from an example";
export const EXAMPLE_IS_OPEN = "The example is open: its paper without its answer. Change what you like.";
export const EXAMPLE_NOT_FETCHED = "The example could not be fetched. Check the connection.";
export const UNDO = "Undo";
export const DELETE = "Delete this paper …";
/** The question, and what stands after it. */
export const deleteFrom = (name: string) => `Delete "${name}" from this browser?`;
export const NO_WAY_BACK = "It cannot be brought back.";
export const DELETE_IT = "Delete it";
export const KEEP_IT = "Keep it";
export const deleted = (name: string) => `"${name}" is deleted.`;
export const OPEN_FILE = "Open the file of a practical";
export const NO_TITLE = "A paper without a title";
export const KEEPS_NOTHING =
  "This browser does not keep anything for this page, so your paper is gone when you close it. Save it as a file, or copy its link.";
export const KEPT_UNREADABLE = "The papers kept in this browser could not be read.";
export const OTHER_TAB = "Another tab has changed this paper too. Yours is kept beside it, as a paper of its own.";

/** A link with a paper in it. */
export const NO_PAPER_BEHIND =
  "The link has something behind # that is no paper; a paper is behind #paper=. Ask for the link again.";
export const CANNOT_UNPACK = "This browser cannot unpack such a link.";
export const linkNotOpened = (why: string) => `The link could not be opened. ${why} Your own papers are as they were.`;
export const LINK_HOLDS_NO_PAPER = "The link holds no paper. Ask for the link again. Your own papers are as they were.";
export const LINK_IS_OPEN = "The paper of the link is open.";

/** What of a paper from outside fitted no field. Places are named by the entries of its file, which are the same in every language. */
export const LEFT_OUT = {
  paper: "the paper",
  sample: (number: number) => `sample ${number}`,
  part: (number: number) => `part ${number}`,
  test: (number: number) => `test ${number}`,
  entry: (number: number) => `entry ${number}`,
  step: "step",
  wasLeftOut: (place: string, why: string) => `${place}: ${why}; it was left out.`,
  more: "And more like these.",
  group: "expected a group of entries",
  list: "expected a list",
  tooMany: (found: number, most: number) => `found ${found} entries, at most ${most} are kept`,
  cutOff: (place: string, found: number, most: number) =>
    `${place}: found ${found} letters, at most ${most} fit; the rest was cut off.`,
  text: "expected text",
  oneOf: (choices: string) => `expected one of ${choices}`,
  noField: "it has no field",
  tooMuchText: "found too much text",
  noSuchTest: "there is no such test",
};

/** What the paper leaves before any test is done. */
export const LEAVES_OPEN = "What the paper leaves open";
export const canBe = (sample: string, salts: number) =>
  `${sample} can be ${salts === 1 ? "one salt" : `${salts} salts`}${salts === 0 ? ": no such sample can be made of these ions" : ""}`;
export const cannotBe = (impossible: number, all: number, samples: string) =>
  `${impossible} of ${all} pairs of ions cannot be ${samples}, and why`;
export const more = (sights: number) => `${sights} more`;

/** The tests as instructions. */
export const only = (letters: string) => `(${letters} only)`;
export const ASK_FIRST = "Ask first.";
export const cautionsForPart = (label: string) => `Cautions for part ${label}`;
export const MORE = "More";
export const PAPER_SAYS = "The paper says:";
export const MAY_MISLEAD = "What may mislead here.";
export const STILL_LOOKING = "Still looking for what may mislead these tests …";

/** The record. */
export const filledIn = (done: number, of: number) => `${done} of ${of} filled in.`;
export const EMPTY_RECORD = "Empty the record";
export const TESTS_AS_NOW = "Working out the tests as they are now; then the record can be filled in.";
export const FINDING_PLACE = "Finding your words a place in the record …";
export const wroteDown = (cell: string, sample: string, words: string) => `${cell} for ${sample}: ${words}.`;
export const OWN_WORDS = "Write an observation in your own words";

/** The paper as a link and as a file. */
export const MAKE_LINK = "Make a link to this paper";
export const SAVE_FILE = "Save it as the file of a practical";
export const PRINT = "Print";
export const LINK_HOLDS = "The link holds the whole paper and its record";
export const FILE = "The file";
/** Where the file goes; between them its folder, and what stands for a salt. */
export const PUT_IT = {
  into: "Put it into",
  says: "of a site. Where a salt is not certain from your record it says",
  until: ": write the answer there, and a summary of your own at the top; until then the build names these places.",
};

/** Instructions pasted from a paper. Sentences are read in one language only. */
export const PASTED_IN: Language = "en-GB";
export const PASTE = "Paste the tests";
export const SENTENCES = "The sentences of the paper, one or many";
export const READING = "Reading …";
export const READ_SENTENCES = "Read these sentences";
export const TRY_EXAMPLE = "Try an example";
export const READER_NOT_LOADED = "The reader could not be loaded. Check the connection and load the page again.";
export const NO_INSTRUCTION = "No instruction was found in this text.";
const counted = (many: number, what: string) => `${many} ${what}${many === 1 ? "" : "s"}`;
export const linesRead = (lines: number, parts: number, questions: number) =>
  `${counted(lines, "line")} of the record read in ${counted(parts, "part")}${questions > 0 ? `, with ${counted(questions, "question")}` : ""}.`;
export const samplesWereAdded = (letters: readonly string[]) =>
  `${letters.length === 1 ? "Sample" : "Samples"} ${letters.join(", ")} ${letters.length === 1 ? "was" : "were"} added above: see what is given.`;
export const testsTaken = (more: string) =>
  `The tests are in the paper below.${more && ` ${more}`} Fields that are still open are marked there.`;
export const NO_TEST_IN_THESE = "There is no test in these sentences.";
