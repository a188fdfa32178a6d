/** The sheets that are printed for one practical. Amounts come as text. */

export const SHEETS = {
  "bench-card": {
    name: "Bench card",
    about: "one side, for the bench: rack, fill marks, bottles, order of work, waste",
  },
  labels: { name: "Tube labels", about: "to cut out and put on the tubes" },
  record: { name: "Record sheet", about: "blank, to be filled in by hand" },
  marks: { name: "Mark sheet", about: "for the teacher; it names the salts" },
};
export const sheetOf = (name: string, practical: string, about: string) => `${name} of "${practical}": ${about}.`;
export const BACK_TO_WALKTHROUGH = "Back to the walkthrough";
export const print = (about: string) => `Print it on A4 from your browser: ${about}.`;

/** Labels. */
export const LABELS_ABOUT =
  "One label for each tube: sample and part, then the marks in mm from the inside of the bottom, in brackets from the thinnest to the thickest wall such tubes are made with. Cut along the lines and tape it above the highest mark.";
export const ofSolid = (grams: string) => `${grams} g of solid`;
export const DOES_NOT_FIT = "does not fit";
export const TOO_MUCH = "too much";
export const hotAtMost = (cm3: string) => `hot: at most ${cm3} cm³`;

/** Record. */
export const FILL = { name: "Name", date: "Date" };
export const RECORD_ABOUT =
  'Write what you see at once: colour, precipitate or solution, in excess, a gas with its test. Nothing seen is written down as "no visible change".';
export const TEST = "Test";
export const SAMPLE = "Sample";
export const NOT_ASKED = "not asked";
export const CONCLUDE = "Conclude";
export const CONCLUSION = { cation: "Cation", anion: "Anion", because: "Because" };

/** Marks. */
export const NAMES_SALTS = "It names the salts.";
export const marksAbout = (total: number) =>
  `One mark for each thing seen and for each ion, ${total} in all: a common way of marking. Your department's own scheme comes first.`;
export const marksOf = (total: number) => `Marks, of ${total}`;
export const MARKS = {
  each: "A mark for each",
  instead: "Accept instead",
  marks: "Marks",
  fewest: "Fewest observations that prove it",
  by: "Proved by",
};
/** Between readings that are accepted as well. */
export const OR_ELSE = "; or ";
export const CONCLUSIONS = "Conclusions";
/** "Zn^2+ from a(i), b(ii) for R": tests of another sample have its letter. */
export const provedFrom = (ion: string, places: readonly { cell: string; sample?: string }[]) =>
  `${ion} from ${places.map(({ cell, sample }) => (sample === undefined ? cell : `${cell} for ${sample}`)).join(", ")}`;

/** Bench card. */
export const GOGGLES = "Goggles on.";
export const CARD_ABOUT = "Your teacher in charge and your school's rules come before this card.";
export const HOT = "A hot tube points away from everyone and is filled no higher than its mark.";
export const SINK = "Nothing goes down the sink that has a bottle below.";
export const RACK = "Rack, front row first, each from left to right";
export const RACK_ABOUT =
  "Millimetres from the inside of the bottom, for common walls: the labels say how far they may be off.";
export const CHECK = "Check first";
export const BOTTLES = "Bottles, each with its dropper";
/** Before its letter. */
export const THE_SAMPLE = "sample";
/** What a waste bottle must hold before it takes a tube; the card has little room. */
export const firstInto = (reagent: string, bottle: string) => `${reagent}, into ${bottle.replace(" bottle", "")} first`;
export const pieces = (count: number) => `${count} small pieces`;
export const GASES = "Gases";
export const ORDER = "Order of work";
export const ORDER_HEADS = { minute: "Minute", tubes: "Tubes", what: "What" };
export const ALL_TUBES = "all";
export const CLEAR_UP = "Clear up.";
export const AFTERWARDS = "Afterwards";
/** Where tubes are emptied to which something is added first. */
export const afterAdding = (into: string, what: readonly string[]) => `${into}, first add ${what.join(" and ")}`;
export const HOW_EMPTIED = "How each is emptied stands in the walkthrough.";
