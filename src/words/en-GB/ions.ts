/** Pages of ions, and the tables on them. Names of ions and titles of tests come as text. */
import type { Colour } from "../../engine/practical/same-colour.ts";
import type { GivenOff } from "../../engine/practical.ts";

type Kind = "cation" | "anion";

/** The list of all ions. */
export const IONS = "Ions";
export const DESCRIPTION =
  "One page for each ion: what it shows in every standard test, what it is taken for, what tells it apart.";
export const ABOUT =
  "One page for each ion: what it shows in every standard test, why, which other ion it is easily taken for, and what tells the two apart. All of that is computed; the few lines about where you meet the ion are written.";
export const OTHER_WAY = "The other way round";
/** Its link between. */
export const SEEN_SOMETHING = {
  ask: "You have seen something and ask what it can be? Begin with the",
  test: "test",
  lists: ": its page lists what every ion shows.",
};
export const KINDS = { cation: "Cations", anion: "Anions" };

/** One ion. */
export const ionTitle = (name: string) => `${name} ion`;
export const KIND = { cation: "Cation", anion: "Anion" };
export const LISTED = { school: "school list", advanced: "advanced list", solid: "met as a solid" };
export const CAUTIONS_AND_GASES = "Cautions and gases";
export const GASES = "Gases it can give off";
export const BY_ITSELF = "By itself";
/** Before the link to hydroxide. */
export const OXIDE =
  "Oxide ions cannot be in water: what dissolves of an oxide becomes hydroxide at once. What such a solution shows is told on the page of";
export const IN_WATER = "In water";
export const UNIVERSAL_INDICATOR = "Universal indicator";
export const FLAME = "Flame";
export const NO_FLAME = "no colour of its own";
export const HIDDEN_BY = "; hidden by";
export const colour = (name: Colour): string => name;
export const SHOWS = "What it shows";
export const showsIn = (ion: string, kind: Kind) => `What ${ion} shows in tests for ${kind}s`;
export const showsInOthers = (ion: string) => `What ${ion} shows in other tests`;
export const IN_THE_WAY = "In tests for something else, where it can get in the way";
export const PARTNER = { cation: "the nitrate (the chloride where the test is for nitrate)", anion: "the sodium salt" };
/** Before a strength, and after it. */
export const workedOutFor = (partner: string) => `Worked out for ${partner} at`;
export const EITHER = '. "Or": near the limit of what can be seen or counted, either may be recorded.';
export const noChangeIn = (tests: readonly string[]) => `No change of its own: ${tests.join(", ").toLowerCase()}.`;
export const TAKEN_FOR = "Easily taken for";
export const MISLEADS = "What can mislead";
export const whyDrops = (ion: string) => `Why: where the ${ion} is, drop by drop`;
export const SOLIDS = "Its salts as solids";

/** What an ion shows, test by test. */
export const TEST = "Test";
export const WHAT_IS_SEEN = "What is seen";
/** On a phone, beside each entry. */
export const SEEN = "Seen";
export const HAPPENS = "What happens";
export const SHOWN_TOO = "Shown too by";
export const NONE = "none";
export const gas = (names: string) => `Gas: ${names}`;
/** Between sights that may be recorded alike. */
export const OR = ", or ";

/** Ions it is taken for. */
export const ION = "Ion";
export const LOOKS_SAME = "Looks the same in";
export const TOLD_APART = "Told apart by";
export const NO_TEST = "no standard test";

/** Its solids. */
export const SOLID = "Solid";
export const AS_BOUGHT = "As bought";
export const STIRRED = "Stirred into water";
export const HEATED_STRONGLY = "Heated strongly";
export const HEATED = "Heated";
export const ITS_GAS = "; gas,";
export const TRACE_OF = "; perhaps a trace of";
export const NOT_HEATED = "not heated in class, or not known";

/** How a gas is shown; the constants have it in English. */
export const shownBy = (_gas: GivenOff, test: string): string => test;
/** What is done, in a table that has little room. */
export const short = (done: string): string => done.replace(/aqueous /g, "");
