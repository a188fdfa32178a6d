/** The order of work. Times come as text, in minutes; volumes in cm3. */
import type { GasTest } from "../../engine/practical.ts";
import { list } from "./language.ts";

export const NEEDS_SCRIPT =
  "Choosing people, burners and tubes needs JavaScript; below is the plan for one person with one burner.";
export const NOT_UNDERSTOOD = "Not understood.";
/** What can be chosen. */
export const ENTRIES = {
  people: "People",
  burners: "Burners",
  "test-tubes": "Test-tubes",
  "boiling-tubes": "Boiling tubes",
  places: "Places in the rack",
  planning: "Minutes for planning",
  minutes: "Minutes allowed",
  free: "Parts may change places",
};
/** Of people or burners. */
export const oneOrTwo = (count: number) => (count === 1 ? "one" : "two");
export const tubes = (count: number, forAll: boolean) =>
  forAll ? `${count}, one for each test` : `${count}, rinsed and used again`;
export const ROOM_FOR_ALL = "room for all";

export const inMinutes = (time: string, one: boolean) => `${time} ${one ? "minute" : "minutes"}`;
/** Held against the minutes that the paper allows. */
export const fits = (allowed: number) => `it fits into the ${allowed} minutes allowed`;
export const over = (inMinutes: string, allowed: number) => `${inMinutes} more than the ${allowed} allowed`;
/** @param bench in minutes, with their unit; whole: with planning and clearing up */
export const whole = (bench: string, whole: string, fits: string, proof: string) =>
  `${bench} at the bench and ${whole} with planning and clearing up: ${fits}. ${proof}`;
export const shortest = (least: string) =>
  `No order takes less than ${least} at the bench, so none is shorter: that is proved.`;
export const nearShortest = (least: string, longer: string) =>
  `No order takes less than ${least} at the bench, so this one is at most ${longer} from the shortest.`;

export const HOW_READ = "Each test ends with its line of the record. Filled bars need the burner.";
export const DOTTED = " A dotted line beside the bars: a tube stands, cools or drips meanwhile.";
export const inUse = (tubes: number) => `Up to ${tubes} ${tubes === 1 ? "tube is" : "tubes are"} in use at once.`;
export const RINSED = " A used tube is rinsed twice with deionised water: tap water holds chloride.";
export const PLACES = "Where each tube stands";
export const STEP_BY_STEP = "Step by step";
export const HEADS = { minute: "Minute", who: "Who", tubes: "Tubes", what: "What" };
export const fromTo = (from: string, to: string) => `${from} to ${to}`;
export const WHO = { both: "both", first: "first", second: "second" };
export const ALL_TUBES = "all";
export const PLANNING = "Read it all, plan, label the tubes and mark them. Write nothing down yet.";
export const CLEARING_UP = "Empty the tubes where they belong, rinse, clear up.";
export const rinseFirst = (samples: readonly string[]) => `Rinse a used tube for ${list(samples)} first. `;
export const BURNER = " (burner)";
export const testsFor = (cells: readonly string[], samples: readonly string[]) =>
  `${cells.join(", ")} for ${list(samples)}`;
const ALONE = { stand: "stands", cool: "cools", "drip through the filter": "drips through the filter" };
/** @param to what the tubes are left alone to do */
export const wait = (to: keyof typeof ALONE, several: boolean, inMinutes: string) =>
  `Then ${several ? "each" : "it"} ${ALONE[to]} for ${inMinutes}.`;

/** In the drawing: the unit at its side, and the name of a bar with what has room behind it. */
export const TIMELINE = {
  unit: "min",
  first: "first person",
  second: "second person",
  planning: ["Read, plan", ", label and mark the tubes"],
  clearingUp: ["Clear up", ": empty, rinse, wipe"],
  flame: "flame, ",
} as const;

/** A step in a few words, within a sentence. */
export const STEPS = {
  lookAgain: "look again",
  take: (amount: string) => `take ${amount}`,
  inExcess: (name: string) => `add ${name} to excess`,
  drops: (count: number, name: string) => `add ${count} ${count === 1 ? "drop" : "drops"} of ${name}`,
  pieces: (count: number, name: string) => `add ${count} ${count === 1 ? "piece" : "pieces"} of ${name}`,
  volume: (cm3: string, name: string) => `add ${cm3} cm3 of ${name}`,
  boil: (inMinutes: string) => `boil for ${inMinutes}`,
  filter: (keep: "filtrate" | "residue") => `filter, keep the ${keep}`,
  wash: "wash the residue",
  heat: (how: "gently" | "strongly") => `heat the solid ${how}`,
  testGas: (by: GasTest) => `test the gas: ${by}`,
  leadThrough: (inExcess: boolean) => `lead the gas through limewater${inExcess ? " for as long as it comes" : ""}`,
  indicator: (by: string) => `try it with ${by}`,
  flame: "clean the wire, test in the flame",
  warm: "warm",
  cool: "cool",
  stand: "stand",
} as const;
