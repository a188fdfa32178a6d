/** The steps of a procedure as instructions. Amounts come as text, formulas in mhchem notation. */
import type { Indicator } from "../../engine/constants/indicators.ts";
import type { GasTest } from "../../engine/practical.ts";
import { list } from "./language.ts";

/** A reagent's name; the constants have it in English. */
export const reagentName = (_id: string, name: string): string => name;

/** Of which samples a part takes: "solution P", "each solution"; with their letters. */
export const one = (form: "solid" | "solution", letter: string) => `${form} ${letter}`;
export const each = (form: "solid" | "solution") => `each ${form}`;
export const letters = (all: readonly string[]) => ` (${list(all)})`;

export const GAS_TEST: Readonly<Record<GasTest, string>> = {
  "damp red litmus": "Hold damp red litmus paper at the mouth of the tube, not touching the glass.",
  "damp blue litmus": "Hold damp blue litmus paper at the mouth of the tube, not touching the glass.",
  limewater:
    "Draw the gas up with a dropper just above the liquid and bubble it through limewater; do this two or three times.",
  "glowing splint": "Put a glowing splint into the mouth of the tube.",
  "lighted splint": "Hold a lighted splint at the mouth of the tube.",
  "acidified manganate(VII) paper":
    "Hold a paper wetted with acidified potassium manganate(VII) at the mouth of the tube.",
  "acidified dichromate(VI) paper":
    "With tongs, hold a paper wetted with acidified potassium dichromate(VI) at the mouth of the tube.",
  "rod with hydrochloric acid":
    "Hold a glass rod wetted with concentrated hydrochloric acid near the mouth of the tube, with your teacher.",
  "rod with ammonia":
    "Hold a glass rod wetted with concentrated ammonia near the mouth of the tube, with your teacher.",
  "anhydrous copper(II) sulfate": "Put a little white anhydrous copper(II) sulfate on the drops on the cool wall.",
  "cobalt(II) chloride paper": "With tongs, touch the drops on the cool wall with dry, blue cobalt(II) chloride paper.",
};

const STOPPER = "the stopper of the delivery tube";
/** Whoever heats fits the stopper first; either way the limewater must not find its way back. */
export function leadThrough(cm3: string, strength: string | undefined, inExcess: boolean, heated: boolean): string[] {
  const through = `the gas bubble through ${cm3} cm3 of limewater${strength ? ` (${strength})` : ""}`;
  return [
    `${heated ? `Fit ${STOPPER} before you heat, and` : `Close the tube at once with ${STOPPER} and`} let ${through}${inExcess ? " for as long as it comes" : " until you see a change"}.`,
    `Take the delivery tube out of the limewater while bubbles still come${heated ? ", and only then take the heat away" : ""}.`,
  ];
}

export const indicator = (which: Indicator, form: string) =>
  `Touch ${form} with a drop of the liquid on a clean glass rod, and compare the colour${which === "litmus" ? "" : " with the chart"}.`;

/** What ends the sentence on an addition: nothing fizzes; a gas is to be tested; it only fizzes. */
export const THEN_SHAKE = "; shake";
export const LITTLE_BY_LITTLE = ", a little at a time";
export const AFTER_FIZZING = ", a little at a time; shake when the fizzing is over";

export function take(amount: string, sample: string, several: boolean, dry: boolean): string {
  const tube = `clean, ${dry ? "dry, " : ""}labelled tube`;
  return `Put ${amount} of ${sample} into ${several ? `its own ${tube}` : `a ${tube}`}.`;
}
export const addInExcess = (what: string, most: string | undefined) =>
  `Add ${what} drop by drop, shaking, until nothing more changes${most === undefined ? "" : `; ${most} cm3 at most`}.`;
export const addPieces = (count: number, what: string) =>
  `Add ${count} small ${count === 1 ? "piece" : "pieces"} of ${what}.`;
export const addDrops = (count: number, what: string, then: string) =>
  `Add ${count} ${count === 1 ? "drop" : "drops"} of ${what}${then}.`;
export const addVolume = (cm3: string, what: string, then: string) => `Add ${cm3} cm3 of ${what}${then}.`;

export const flame = (sample: string, several: boolean): string[] => [
  "Dip the wire into dilute hydrochloric acid on a watch glass and hold it in the roaring flame; repeat until it gives no colour.",
  `Wet it with the acid once more and touch it to a little of ${sample} on another watch glass.`,
  `Hold it at the edge of the roaring flame and look at once.${several ? " Clean the wire again before the next sample." : ""}`,
];
export const SHAKE = "Shake the tube gently.";
export const WARM = "Warm the tube gently; keep it moving, its mouth away from everyone.";
export const boil = (time: string) => `Boil gently for ${time}; keep the tube moving, its mouth away from everyone.`;
export const COOL =
  "Let the tube cool to room temperature; when it is no longer too hot to touch, cold water on its outside helps.";
export const stand = (time: string) => `Let it stand for ${time}.`;
export const filter = (keep: string) => `Filter, and keep the ${keep}.`;
export const WASH =
  "Wash the residue two or three times with a little deionised water; throw the washings away as waste.";
export const heatSolid = (how: string) =>
  `Heat the solid ${how}, the mouth of the tube a little lower than the bottom and away from everyone; if it melts, hold the tube level. Look at it hot, and again when cold.`;

/** What a gas is tested with. */
export const gasTest = (test: GasTest): string => test;

/** A test in a few words, one after the other. */
export const BRIEF = {
  inExcess: (name: string) => `${name} in excess`,
  drops: (name: string, count: number) => `${name}, ${count} ${count === 1 ? "drop" : "drops"}`,
  warmed: "warmed",
  boiled: "boiled",
  cooled: "cooled",
  leftToStand: "left to stand",
  filtered: (keep: string) => `filtered, the ${keep}`,
  washed: "washed with water",
  heated: (how: string) => `the solid heated ${how}`,
  ledThrough: (inExcess: boolean) => `its gas led through limewater${inExcess ? " in excess" : ""}`,
  triedWith: (indicator: string) => `tried with ${indicator}`,
  flame: "flame test",
  look: "look",
  followedBy: ", then ",
};
