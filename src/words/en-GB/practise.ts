/** Blind practice: its number, test by test, the conclusion. What is said of the marks at the end is in `practise-result.ts`. */

export const NO_SCRIPT = {
  print: "Practising here needs JavaScript. Without it, print the",
  sheet: "blank record sheet",
  compare: ", let somebody choose the unknowns, write what you see, and compare with the words of the",
  walkthrough: "walkthrough",
};
export const NOTHING_TO_DRAW =
  "There is nothing to practise with: every set of salts this paper allows would put one into a test that is not safe on it.";

/** The number of the set. */
export const NO_NUMBER = "No number is given";
export const noNumberOfASet = (typed: string) => `“${typed}” is no number of a set`;
export const expected = (fault: string, most: number) => `${fault}: expected a whole number from 1 to ${most}.`;
export const CHOOSE_BELOW = "Choose one below.";
export const underWay = (seed: number) => `A practice with set ${seed} is under way.`;
export const goOn = (seed: number) => `Go on with set ${seed}`;
export const giveUpFor = (seed: number) => `Give it up and begin set ${seed}`;
export const NUMBER = "Number of the set";
export const BEGIN = "Begin";
export const BEGIN_NEW = "Begin with a new number";
export const drawn = (seed: number, first: string) => `Set ${seed} is drawn. First test: ${first}.`;
/** Before the number, and after it. */
export const SET = "Set";
export const SAME_UNKNOWNS = ": whoever enters this number gets the same unknowns.";
export const CLEAR = "Clear and choose another number";
export const CLEARED = "Cleared: nothing of this practice is kept.";
export const NOT_KEPT = "This browser keeps nothing: what you write is lost when the page is closed or loaded again.";

/** Where the reader is on the way. */
export const WAY = "Tests of this practical";
export const LAST = "conclude";
export const DONE = "done";

/** One test. */
export const cautionsFor = (test: string) => `Cautions for ${test}`;
export const TAKE_CARE = "Take care:";
export const TEST_SAYS = "The paper says:";
export const EXPECT = "What could you see, and what would it mean?";
export const EXPECT_OR_LEAVE = "(yours to fill in or leave)";
export const CARRY_OUT = "Carry it out";
export const EXPECTED = "You expected:";
export const SEE = "What you see";
export const notDoneOn = (samples: string) => `${samples}: not done here.`;
export const stillEmpty = (sample: string) => `${sample} is still empty.`;
export const LINE_EMPTY = "A line is still empty. Write what you see there, or press the button again to leave it out.";
export const SHOW_MODEL = "Show the model wording";
export const marks = (earned: number, of: number) => `${earned} of ${of} marks.`;
export const marked = (earned: number, of: number) => `Marked: ${earned} of ${of}`;
export const nextTest = (test: string) => `Next test: ${test}.`;
export const ALL_DONE = "All tests are done. Now conclude.";
export const onTo = (test: string) => `On to ${test}`;
export const ON_TO_CONCLUSION = "On to the conclusion";

/** One line of the record. */
export const recordFor = (sample: string) => `Your record for ${sample}`;
export const OR_CHOOSE = "or choose";
export const readAs = (words: string) => `Read as: ${words}.`;
export const MODEL_WORDING = "(model wording)";
export const YOU_WROTE = "You wrote:";
export const WROTE_NOTHING = "nothing";
export const mark = (earned: boolean) => (earned ? "1 mark" : "no mark");
export const notSeenHere = (words: string) => `Not to be seen here: ${words}.`;

/** The conclusion. */
export const CONCLUDE = "Conclude";
export const CONCLUDE_ABOUT = "which ions, and which tests prove them";
export const PAPER_SAYS = "What the paper says";
export const KIND = { cations: "Cation", anions: "Anion" };
export const CHOOSE = "choose";
export const LEFT_OPEN = "these tests leave it open";
export const PROVED_BY = "proved by";
export const ionProvedBy = (kind: string, sample: string, test: string) => `${kind} of ${sample} proved by ${test}`;
export const AS_FEW = "Tick as few tests as will do: those without which the ion could be another one.";
export const MARK_ALL = "Mark it all";
export const OWN_RECORD = "Your record";
export const TEST = "Test";
export const NOTHING_WRITTEN = "nothing written";
export const NOT_DONE = "not done";
export const MARKING = "Marking …";
export const NOT_FETCHED =
  "The marks could not be fetched. What you wrote is kept: check the connection and load the page again.";
