/** Pages of tests, and the tables on them. */

/** The list of all tests. */
export const TESTS = "Tests";
export const DESCRIPTION =
  "The test-tube tests for cations, anions and gases: how each is done, what it shows, what misleads.";
export const ABOUT =
  "One page for each test: why it works, how it is done, what you see, what can mislead you, and how to write it down.";
export const ORDER = "Order of tests";
export const CARBONATE_FIRST =
  "For anions, test for carbonate first, then sulfate, then the halides: carbonate and sulfate can cloud the later tubes too.";
export const FOR_THE = { cation: "For the cation", anion: "For the anion", other: "Gases, solids and papers" };

/** One test. */
export const KIND = { cation: "Ion test", anion: "Ion test", other: "Test" };
/** Before ions; before reagents. */
export const FINDS = "· finds";
export const NEEDS = "· needs";
export const CAUTIONS = "Cautions";
export const WHY_DROPS = "Why, drop by drop";
export const FALSE_RESULTS = "False results, worked out";
export const FOR_ADVANCED = "For samples of the advanced list in solution:";

/** What a test shows for every ion. */
export const ADVANCED_ONLY = "Only on the advanced list";
export const PARTNER = { sodium: "sodium salt", chloride: "chloride or sulfate", nitrate: "nitrate" };
export const KINDS = { cation: "Cations", anion: "Anions" };
export const ION = "Ion";
export const HAPPENS = "What happens";
export const ALL_OTHERS = "All others:";
/** Before a strength. */
export const workedOutFor = (partner: string) => `Worked out for the ${partner} of each ion at`;
/** A stage of a test as its heading in a table, where it has no words of its own. */
export const asHeading = (title: string) => title.toLowerCase();

/** Gases. */
export const GASES_CAPTION = "Gases, their tests, and where they come from";
export const GAS = "Gas";
export const TEST = "Test";
export const GIVEN_OFF = "Given off by, in a tube";
export const HEATED = "By so many solids of the store, heated";
/** The same on a phone, beside each entry. */
export const IN_A_TUBE = "In a tube";
export const HEATED_SHORT = "Solids of the store that give it off when heated";
export const FROM_METAL = "any, when a metal meets acid or hot alkali";
export const NONE = "none";

/** Heated solids. */
export const notHeated = (names: string) => `Worked out for dry solids. Not heated in class, or not known: ${names}.`;

/** Universal indicator. */
export const INDICATOR_CAPTION = "Universal indicator, from acidic to alkaline";
export const PAPER = "Paper";
export const IONS = "Ions";
export const range = (values: readonly string[]) => values.join(" to ");
/** Before a strength. */
export const INDICATOR_FOR = "Worked out for nitrates of the cations and sodium salts of the anions at";

/** Powders. */
export const POWDERS_CAPTION = "Powders in acid, then in alkali";
export const POWDER = "Powder";
export const POWDER_HEADS = ["hydrochloric acid", "sodium hydroxide in excess", "nitric acid, then ammonia in excess"];
/** Around a mass and a volume. */
export const POWDERS_FOR = { mass: "Worked out for", in: "of each in", water: "of water." };
