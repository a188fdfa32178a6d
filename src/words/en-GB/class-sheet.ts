/** The preparation sheet for a class. Amounts come as text. */

export const FOR_WHOM = "For technician and teacher.";
export const NAMES_SALTS = "This page names the salts. A student who reads on has nothing left to find out.";
export const WHO_DECIDES = "Who decides.";
export const CANNOT_BE_MADE = "Cannot be made up.";
export const NEEDS_SCRIPT =
  "Another class can be chosen only where JavaScript is on; below is the sheet for the usual one.";
export const HAZARDS = "Hazards at these strengths";
export const GASES = "Gases that may come off";
/** @param tests in which it may */
export const haveReady = (tests: string, have: string) => `, in ${tests}; have ready ${have}`;
export const DAY_BEFORE = "The day before";

/** The class, as it is chosen. */
export const CLASS = "The class";
export const ENTRIES = {
  groups: "number of groups",
  sparePercent: "spare",
  sampleCm3: "volume of each sample for a group",
  sampleG: "mass of each solid sample for a group",
};
export const NOT_UNDERSTOOD = "Not understood.";
export const notThat = (entry: string, found: string, whole: boolean, least: number, most: number, unit: string) =>
  `${entry}: found ${found}, expected ${whole ? "a whole number" : "a number"} from ${least} to ${most}${whole ? "" : ` ${unit}`}`;
/** As it was chosen: the class stands after the first, with its groups, its spare, what each group is given. */
export const isFor = (still: boolean) => `This sheet is ${still ? "still " : ""}for`;
export const GROUP_IS = "A group is whoever works at one place, alone or as a pair.";
export const groups = (count: number) => (count === 1 ? "1 group" : `${count} groups`);
export const spare = (percent: string) => `${percent}\u00a0% spare`;
export const ofEachSample = (amount: string) => `${amount} of each sample for a group`;
export const ofEachSolid = (amount: string) => `${amount} of each solid sample for a group`;
export const TOO_LITTLE = "Too little.";

/** Make up. */
export const MAKE_UP = "Make up";
export const MAKE_UP_CAPTION = "Make up, with the salt behind each letter";
export const MAKE_HEADS = { what: "What", make: "Make", how: "How" };
export const wanted = (amount: string) => `(${amount} wanted)`;
export const amountOf = (amount: string, what: string) => `${amount} of ${what}`;
/** Between bottles of which any will do. */
export const OR = ", or ";
export const inTubes = (amount: string) => `: ${amount} for each group, in a stoppered tube`;
export const waterFirst = (amount: string) => ` About ${amount} of water to begin with.`;
export const TAKE_CARE = "Take care.";
/** Before where the strength of a stock is from. */
export const STOCK = "Stock:";

/** Set out. */
export const SET_OUT = "Set out";
export const SET_OUT_ABOUT =
  "Every sample comes in the same amount, so that the filling tells nothing of what it is. The salt's name stands in the list above and nowhere else. What a hazard label says is taken from the supplier's safety data sheet.";
export const BOTTLES = "Bottles and labels";
export const BOTTLE_HEADS = { label: "Write on the label", in: "In", fill: "Fill with", count: "How many" };
export const LETTER_ONLY = "(the letter and nothing else)";
export const AND_DATE = "and the date";
export const STOPPERED_TUBE = "stoppered tube";
export const ALSO = "Also";
export const GOGGLES = "Goggles for everybody in the room, and a few spare pairs.";
export const about = (amount: string) => `, about ${amount}`;
export const withTeacher = (what: string) => `One for the class, in the fume cupboard: ${what}.`;

/** From the store. */
export const STORE = "From the store";
export const STORE_CAPTION = "For all bottles together, by the first bottle named";
export const STORE_HEADS = { what: "What", amount: "Amount" };
export const SCARCE = "Scarce:";
/** Why the grams of an element are counted; the constants have it in English. */
export const whyScarce = (_element: string, why: string): string => why;
/** A bottle by what it holds, cm3; the constants have its name in English. */
export const bottleOf = (_cm3: number, name: string): string => name;
export const testsUseMore = (used: string, sample: string, given: string) =>
  `The tests use ${used} of ${sample}, and each group gets only ${given}.`;

/** Waste. */
export const WASTE = "Waste";
export const WASTE_CAPTION = "Waste to expect, one rinse of every tube included";
export const WASTE_HEADS = { into: "Into", about: "About", setOut: "Set out", how: "How" };
/** "240 cm³ of dilute nitric acid" */
export const ofIt = (amount: string, name: string) => `${amount} of ${name}`;
/** @param bottles among which it is shared out */
export const standsFirst = (what: string, bottles: number) =>
  `Put in ${what} before the class begins${bottles > 1 ? ", shared out among the bottles" : ""}: it is part of what is made up.`;
export const A_LITTLE = "a little";
export const NO_VESSEL = "nothing";
export const BEAKER = "a beaker at each place";
export const ONE_FOR_CLASS = "one for the class";

/** Hazards. */
export const LIMITS = "What each can do to a person, and the limits that decide";
export const LIMIT_HEADS = { bottle: "Bottle", at: "At its strength" };
/** Before the strength of the usual bottle. */
export const SAID_OF = "Said of the usual";
export const atStrength = (what: string, strength: string) => `${what} at ${strength}`;
export const byLimits = (words: string) => `, by the limits: ${words}.`;
export const DIFFER = "The sources differ; the stricter is followed.";
export const ITS_LIMITS = "Its limits:";
export const READ = "read";
export const FROM_MEMORY = "from memory";
export const NO_LIMIT = "no limit of strength is known here, which does not mean that there is none.";
export const NONE_APPLIES = "No limit of strength applies.";
export const WORDS_STRICTER = "The bottle's words are stricter than these limits: follow the words.";
export const CONFIRM = ["Confirm on the supplier's safety data sheet:", "some of this is from memory."] as const;
export const LIMITS_ABOUT =
  "Limits in per cent are taken as g in 100 cm³ and rounded to two figures. A strength that stands exactly on a limit counts as over it. Each substance is taken by itself; together they may be worse.";
export const FIRST_AID = "First aid";
export const AID_HEADS = { after: "After", do: "Do" };
