/** Parts of the page for a paper of one's own that are fetched when they come to be used: words of one's own, pasted sentences, what follows. */
import { list } from "./language.ts";

/** An observation in the reader's own words. */
export const TEST_AND_SAMPLE = "Test and sample";
export const place = (cell: string, sample: string) => `${cell} for ${sample}`;
export const WRITTEN = "(written)";
export const YOU_SAW = "What you saw";
export const SUCH_AS = "white ppt, sol in xs giving colourless soln";
export const WRITE_DOWN = "Write it down";
export const READ_AS = "Read as:";
export const QUESTION = "Question:";
export const wroteDown = (place: string, words: string) => `${place}: ${words}.`;

/** Pasted sentences as they were understood. */
export const FRESH_TUBE = "A fresh tube";
export const tubeFor = (samples: readonly string[]) =>
  samples.length > 0 ? `for ${list(samples)}` : "for each sample";
export const NOTHING_IS_DONE = "nothing is done in the tube.";
export const TAKEN_FOR_GRANTED = "Taken for granted:";
export const notInPaper = (samples: readonly string[]) =>
  samples.length === 1
    ? `Sample ${samples[0]} is not in the paper yet: it is added with the tests.`
    : `Samples ${list(samples)} are not in the paper yet: they are added with the tests.`;
export const TAKE_TESTS = "Put these tests into the paper";
export const LEAVE_THEM = "Leave them";
/** A step in a few words; `…` stands for what is missing. */
export const STEP = {
  unknown: "an unknown step",
  take: (amount: string) => `take ${amount}`,
  inExcess: (what: string) => `add ${what} in excess`,
  drops: (count: string, what: string) => `add ${count} ${count === "1" ? "drop" : "drops"} of ${what}`,
  pieces: (count: string, what: string) => `add ${count} ${count === "1" ? "piece" : "pieces"} of ${what}`,
  volume: (volume: string, what: string) => `add ${volume} of ${what}`,
  boil: (time: string) => `boil for ${time}`,
  stand: (time: string) => `let it stand for ${time}`,
  filter: (keep: string) => `filter, keep the ${keep}`,
  heat: (how: string) => `heat the dry solid ${how}`,
  testGas: (how: string) => `test the gas: ${how}`,
  leadThrough: (inExcess: boolean) => `lead the gas through limewater${inExcess ? ", in excess" : ""}`,
  indicator: (which: string) => `try it with ${which}`,
  /** Of the name of a step, as it stands in the list of steps. */
  other: (name: string) => name.charAt(0).toLowerCase() + name.slice(1),
};

/** A test that would settle what the record leaves open. */
export const LOOKING = "Looking through the standard tests …";
export const LOOK = "Look for a test that would settle it";
export const NONE_WOULD = "No standard test would tell these salts apart.";
