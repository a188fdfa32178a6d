/** What stands on the bench besides tubes, samples and reagents, and what is done with it first. Volumes and masses come as text. */
import type { GasKit } from "../../engine/planning/gas-plan.ts";

const DAMP = "Damp it with deionised water and hold it at the mouth of the tube without touching the glass.";
const WITH_TEACHER =
  "It fumes and burns: your teacher does this, or stands by, in a fume cupboard or at an open window.";

interface Kit {
  what: string;
  /** @param filling what limewater is put where, as a sentence: `filling` below */
  prepare: (filling: string) => string;
}
/** For each way of testing a gas. */
export const GASES: Readonly<Record<GasKit, Kit>> = {
  "damp red litmus": { what: "red litmus paper", prepare: () => DAMP },
  "damp blue litmus": { what: "blue litmus paper", prepare: () => DAMP },
  limewater: {
    what: "small tube with limewater and a clean dropper",
    prepare: (filling) => `${filling} Draw the gas up with the dropper just above the liquid and bubble it through.`,
  },
  "glowing splint": { what: "splint", prepare: () => "Light it, blow the flame out and use it while it glows." },
  "lighted splint": { what: "splint", prepare: () => "Light it before the gas comes." },
  "acidified manganate(VII) paper": {
    what: "strip of filter paper",
    prepare: () => "Wet it with a drop of acidified potassium manganate(VII) just before the test.",
  },
  "acidified dichromate(VI) paper": {
    what: "strip of filter paper, held with tongs",
    prepare: () =>
      "Wet it with a drop of acidified potassium dichromate(VI), which can cause cancer and allergy: gloves, and into the chromium waste afterwards.",
  },
  "rod with hydrochloric acid": {
    what: "glass rod",
    prepare: () => `Dip it into concentrated hydrochloric acid. ${WITH_TEACHER}`,
  },
  "rod with ammonia": { what: "glass rod", prepare: () => `Dip it into concentrated ammonia. ${WITH_TEACHER}` },
  "anhydrous copper(II) sulfate": {
    what: "spatula tip of white anhydrous copper(II) sulfate",
    prepare: () => "Keep it dry. It damages eyes: goggles on.",
  },
  "cobalt(II) chloride paper": {
    what: "dry, blue cobalt(II) chloride paper",
    prepare: () => "Keep it dry and hold it with tongs: it can cause cancer and allergy.",
  },
  "delivery tube into limewater": {
    what: "delivery tube with a stopper, and a tube with limewater",
    prepare: (filling) => `${filling} See that the delivery tube is open from end to end.`,
  },
};
export const filling = (cm3: string, all: string, mm: number, tube: string) =>
  `Put ${cm3} cm3 of limewater in each, ${all} cm3 in all: ${mm} mm deep in a ${tube}.`;
/** Why it stands ready, behind the way of testing. */
export const forTest = (test: GasKit, because: string) => `${test}: ${because}`;

/** "part a", "parts a, c" */
const parts = (letters: readonly string[]) => `${letters.length > 1 ? "parts" : "part"} ${letters.join(", ")}`;
export const heatingIn = (letters: readonly string[]) => `heating in ${parts(letters)}`;
export const boilingIn = (letters: readonly string[]) => `boiling in ${parts(letters)}`;
export const flameTestIn = (letters: readonly string[]) => `flame test in ${parts(letters)}`;
export const filteringIn = (letters: readonly string[]) => `filtering in ${parts(letters)}`;
export const SPLINTS = "splints";
export const tubes = (count: number) => `${count} tubes`;
export const inCaseColoured = (cells: readonly string[]) => `in case ${cells.join(" or ")} gives a coloured gas`;
/** @param tubes labels of those that hold it */
export const acidIn = (tubes: readonly string[]) => `the acid in ${tubes.join(", ")} before they are emptied`;
/** @param tip grams on the very tip of a spatula; `end` on its end */
export const wipeSpatula = (tip: string, end: string) =>
  `Wipe it clean between two samples. Weigh each portion, or judge it: ${tip} g is about what the very tip holds, ${end} g what its end holds.`;

/** What it is, what is done with it first, and why it is there where that is always the same. */
export const EXTRAS = {
  goggles: {
    what: "pair of goggles",
    prepare: "Put them on before the first bottle is opened.",
    because: "every part",
  },
  rack: { what: "test-tube rack" },
  labels: {
    what: "label pen and paper labels",
    prepare: "Label each tube before filling it.",
    because: "every tube",
  },
  burner: {
    what: "burner with heat mat and lighter",
    prepare: "Try both, then turn the burner off or to the yellow flame.",
  },
  holder: { what: "test-tube holder", prepare: "Grip the tube near its mouth." },
  granule: { what: "anti-bumping granule", prepare: "Put it in while the liquid is cold." },
  wire: {
    what: "flame-test wire",
    prepare: "Clean it in the acid and the flame until it gives no colour, before each sample.",
  },
  watchGlass: {
    what: "watch glass",
    prepare: "One with the acid for the wire, one for a little of each sample.",
  },
  spatula: { what: "narrow spatula", because: "portions of solid samples" },
  tweezers: {
    what: "tweezers",
    prepare: "Hold each paper with them, never in your fingers.",
    because: "papers for gases",
  },
  funnel: { what: "funnel with filter paper", prepare: "Fold the paper and wet it with deionised water." },
  card: { what: "white card", prepare: "Hold it behind the tube: a pale gas is easily missed." },
  indicator: {
    prepare: "Lay it on a white tile and touch it with a drop on a clean glass rod. Never dip it into the tube.",
  },
  tile: {
    what: "white tile with a glass rod",
    prepare: "Rinse and dry the rod between two liquids.",
    because: "indicator paper",
  },
  dropper: {
    what: "clean dropper",
    prepare: "One for each bottle. Never lay it on the bench or dip it into a tube.",
    because: "one dropper for each bottle of solution",
  },
  carbonate: {
    what: "small bottle of solid sodium carbonate with a spatula of its own",
    prepare: "Label it. It irritates eyes: goggles on. It goes into no tube before the last line is written.",
  },
  washBottle: { what: "wash bottle of deionised water", because: "rinsing tubes and damping papers" },
  beaker: { because: "for what goes into no bottle; nothing into the sink until your teacher says so" },
};
