/** A paper of one's own, as it is entered: samples, statements, parts, tests and steps. */
import type { Indicator } from "../../engine/constants/indicators.ts";

export const TITLE = "Title";
export const MINUTES = "Minutes allowed";
/** Before what is wrong with an entry. */
export const TO_DO = "To do:";
/** Where nothing is chosen yet. */
export const CHOOSE = "choose …";
export const REMOVE = "Remove";

/** Samples. */
export const SAMPLES = "Samples";
export const numbered = (number: number) => `number ${number}`;
/** A field beside its name: what is written there, and what a listener hears. */
export const LETTER = "Letter";
export const letterOf = (sample: string) => `Letter of sample ${sample}`;
export const GIVEN_AS = "Given as";
export const isGivenAs = (sample: string) => `Sample ${sample} is given as`;
export const GIVEN = { solution: "a solution", solid: "a solid", both: "a solid and its solution" };
export const STRENGTH = "Strength of the solution";
export const NO_STRENGTH =
  'Where the paper gives no strength, write "about 0.1 mol/dm3": what 0.02 to 0.5 mol/dm3 would show then counts too.';
export const strengthOf = (sample: string) => `Strength of solution ${sample}`;
export const IONS = { cations: "Cations", anions: "Anions" };
export const ionsIn = (kind: "cations" | "anions", sample: string) => `${IONS[kind]} in sample ${sample}`;
export const COUNTS = { 1: "one", 2: "two" };
/** After "Remove", for those who hear it alone. */
export const theSample = (sample: string) => `sample ${sample}`;
export const ADD_SAMPLE = "Add a sample";
/** @param parts letters of the parts that go too; @param statements how many go */
export const sampleRemoved = (sample: string, parts: readonly string[], statements: number): string => {
  const gone = [
    ...(parts.length === 0 ? [] : [`${parts.length === 1 ? "part" : "parts"} ${parts.join(", ")}`]),
    ...(statements === 0 ? [] : [statements === 1 ? "one statement" : `${statements} statements`]),
  ];
  const makes = parts.length + statements > 1 ? "make" : "makes";
  const besides = gone.length === 0 ? "" : `, and with it ${gone.join(" and ")}, which ${makes} no sense without it`;
  return `Sample ${sample} is removed${besides}. Undo brings it all back.`;
};

/** What the paper says. */
export const PAPER_SAYS = "What the paper says";
type Kind = "cations" | "anions";
export const LISTS = { school: "the school list", advanced: "the advanced list", ticked: "those I tick" };
export const OWN_LIST = "our department's list";
export const canBe = (kind: Kind) => `The ${kind} can be`;
export const tickOffered = (kind: Kind) => `Tick the ${kind} the paper offers`;
export const NOT_KNOWN_HERE = "(not known here)";
export const inAll = (kind: Kind) => `Different ${kind} in all, if the paper says`;
export const STATEMENTS = {
  share: "Some samples hold the same ion",
  differ: "Some samples hold different ions",
  same: "Some samples are the same salt",
  contains: "An ion is in some of the samples",
};
export const statement = (number: number, words: string) => `Statement ${number}: ${words}`;
export const ION = "Ion";
export const KINDS = { cation: "cation", anion: "anion" };
export const IN_HOW_MANY = "In how many";
export const ONE_OR_MORE = "1 or more";
export const OF_THESE = "Of these samples (none ticked: of all)";
export const theStatement = (number: number) => `statement ${number}`;
export const ADD_STATEMENT = "Add a statement:";
export const NO_SUCH_SAMPLE = "(no such sample)";

/** Parts and tests. */
export const TESTS = "Tests";
export const NO_TEST = "No test yet. Paste the sentences of the paper above, or add a part and choose its steps.";
export const ADD_PART = "Add a part, with a fresh tube";
export const PART = "Part";
export const part = (label: string) => `Part ${label}`;
export const CALLED = "What it is called";
export const partCalled = (label: string) => `What part ${label} is called`;
export const TAKEN_AS = "Taken as";
export const partTakes = (label: string) => `Part ${label} takes`;
export const TAKEN = { "": "as the step says", solution: "the solution", solid: "the solid" };
export const removePart = (label: string) => `Remove part ${label}`;
export const DONE_ON = "Done on (none ticked: on all)";
export const ADD_TEST = "Add a test in the same tube";
export const ofPart = (label: string) => `, part ${label}`;
export const test = (id: string) => `Test ${id}`;
export const ADD_STEP = "Add a step";
export const toTest = (id: string) => `to ${id}`;
export const JOIN = "Join to the line above";
export const removeTest = (id: string) => `Remove test ${id}`;

/** Steps. `called` is "step 2 of a(i)". */
export const stepOf = (number: number, test: string) => `step ${number} of ${test}`;
export const doneIn = (called: string) => `What is done in ${called}`;
export const NEW_LINE = "New line from here";
export const ASKED = {
  take: (called: string) => `How much is taken, ${called}`,
  reagent: (called: string) => `Reagent of ${called}`,
  amount: (called: string) => `How the amount is said, ${called}`,
  count: (key: "drops" | "pieces", called: string) => `How many ${key}, ${called}`,
  volume: (called: string) => `Volume, ${called}`,
  at: (called: string) => `Strength, if the paper gives one, ${called}`,
  time: (called: string) => `For how long, ${called}`,
  filter: (called: string) => `What is kept, ${called}`,
  heat: (called: string) => `How, ${called}`,
  testGas: (called: string) => `With what, ${called}`,
  indicator: (called: string) => `Which indicator, ${called}`,
};
/** What stands in an empty field, and the strength that a new sample begins with. */
export const USUAL_STRENGTH = "0.1 mol/dm3";
export const HINTS = { take: "1 cm3 or 0.2 g", strength: "usual strength" };
export const KEEP = { filtrate: "keep the filtrate", residue: "keep the residue" };
export const HEAT = { gently: "gently", strongly: "strongly" };
export const AS_LONG_AS_IT_COMES = "for as long as it comes";
export const indicator = (which: Indicator): string => which;

/** What is done in a step, by the verb of its entry. */
export const STEPS = {
  take: "Take some of the sample",
  add: "Add a reagent",
  warm: "Warm gently",
  boil: "Boil",
  testGas: "Test the gas",
  leadThrough: "Lead the gas through limewater",
  heat: "Heat the dry solid",
  flame: "Flame test",
  indicator: "Try with an indicator",
  filter: "Filter",
  wash: "Wash the residue",
  cool: "Let it cool",
  stand: "Let it stand",
  shake: "Shake",
};
/** How an amount of a reagent is said. */
export const AMOUNTS = { drops: "drops", volume: "a volume", until: "in excess", pieces: "pieces" };

/** What an unfinished step is asked. */
export const WHICH_REAGENT = "Which reagent? Choose it from the list.";
export const howMuchOf = (reagent: string) => `How much ${reagent}? Choose drops, a volume, or in excess.`;
export const WITH_WHAT = "With what is the gas tested?";
export const WHICH_KEPT = "Which is kept: the filtrate or the residue?";
export const HOW_LONG_STANDS = 'How long does it stand? Write a time such as "5 min".';
export const HOW_LONG_BOILS = 'How long is it boiled? Write a time such as "1 min".';
export const HOW_MUCH_TAKEN = 'How much is taken? Write an amount such as "1 cm3" or "0.2 g".';
