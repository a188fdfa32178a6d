/** What the plan of a bench says of tubes, liquids, kit and checks. Volumes and masses come as text with a decimal point, in cm3 and g. */
import { list, OR } from "./language.ts";

/** Behind the label of a tube. */
export const KEPT = { filtrate: "filtrate", residue: "residue" };
export const LIMEWATER = "limewater";
export const WATCH_GLASS = "watch glass";
/** What is added to reach a mark. */
export const ofSample = (cm3: string, sample: string) => `${cm3} cm3 of ${sample}`;
export const drops = (count: number, reagent: string) => `${count} ${count === 1 ? "drop" : "drops"} of ${reagent}`;
export const volume = (cm3: string, reagent: string) => `${cm3} cm3 of ${reagent}`;
export const inExcess = (reagent: string) => `${reagent} in excess, at most`;
export const FILTRATE = "filtrate, at most";

/** Of a sample. */
const OF = { solution: "solution", solid: "solid" };
type Form = keyof typeof OF;
export const needed = (amounts: readonly { amount: string; of: Form }[]) =>
  amounts.map(({ amount, of }) => `${amount} of ${OF[of]}`).join(" and ") || "none";
export const setOut = (amounts: readonly { amount: string; of: Form; kept: string }[]) =>
  amounts.map(({ amount, of, kept }) => `${amount} of ${OF[of]}, ${kept} of it kept back`).join("; ") || "none";

/** Warnings, behind the part. */
export const inPart = (part: string, warning: string) => `Part ${part}: ${warning}`;
export const HARD_GLASS =
  "a solid and then a solution are heated in one tube, so the boiling tube must be hard (borosilicate) glass.";
export const givenAsSolid = (cm3: string, sample: string) =>
  `it takes ${cm3} cm3 of ${sample}, which is given as a solid. Dissolve some first.`;
export const givenAsSolution = (g: string, sample: string) =>
  `it takes ${g} g of ${sample}, which is given as a solution. Ask for the solid.`;
export const noAmount = (amount: string) => `the paper gives no amount of the sample; ${amount} is planned.`;
/** @param solid cm3 of it that the solid takes up, where there is any */
export const tooFullToHeat = (cm3: string, solid: string | undefined, cell: string, limit: string, tube: string) =>
  `the tubes may hold ${cm3} cm3${solid === undefined ? "" : `, ${solid} cm3 of it the solid,`} when heated in ${cell}, above the safe filling of ${limit} cm3 ` +
  `(one tenth of a ${tube}). Take less of the sample, add no more than is needed, or use a larger boiling tube.`;
export const tooMuchSolid = (g: string, cm3: string, cell: string, limit: string, tube: string) =>
  `${g} g of solid fills about ${cm3} cm3 when heated in ${cell}, above the safe filling of ` +
  `${limit} cm3 (one fifth of a ${tube}). Take less.`;
export const tooFull = (cm3: string, tube: string, brim: string) =>
  `the tests may need ${cm3} cm3, but a ${tube} holds ${brim} cm3. Use a larger tube.`;
export const tooFullToShake = (cm3: string, tube: string) =>
  `the tubes may hold ${cm3} cm3, more than half of a ${tube}, too full to shake. Use a larger tube.`;
/** @param dry a solid or a paper, of which pieces are taken */
export const wrongAmount = (reagent: string, dry: boolean) =>
  `found ${dry ? "drops or a volume" : "pieces"} of ${reagent}, expected ${dry ? "a number of pieces" : "drops or a volume"}. None is set out.`;
interface NoExcess {
  planned: string;
  reagent: string;
  alkali: number;
  sampleCm3: string;
  salt: number;
  acid: boolean;
  least: string;
}
export const noExcess = ({ planned, reagent, alkali, sampleCm3, salt, acid, least }: NoExcess) =>
  `${planned} cm3 of ${reagent} at ${alkali} mol/dm3 is no excess for ` +
  `${sampleCm3} cm3 of a ${salt} mol/dm3 sample. An aluminium salt ${acid ? "and the acid in the tube " : ""}would take ${least} cm3. ` +
  "Take less of the sample, dilute it, or use stronger alkali.";

/** Cautions with figures in them. */
export const stronger = (strength: number, usual: number, limits: readonly string[]) =>
  `At ${strength} mol/dm3 it is stronger than the usual ${usual} mol/dm3, so ask your teacher first.${limits.length > 0 ? ` Limits: ${limits.join("; ")}.` : ""}`;
/** @param salts by formula; `more` of them are only counted */
export function melt(salts: readonly string[], more: number): string {
  const named = list([...salts, ...(more > 0 ? [`${more} more`] : [])]);
  return `Of what a sample heated dry may be, ${named} ${salts.length > 1 ? "melt" : "melts"}: as soon as it turns liquid hold the tube level, so that nothing hot runs to the mouth.`;
}
/** What a sample may be that a test is unsafe on: salts by name; ions that may be in many. */
interface Unsafe {
  salts: readonly string[];
  ions: readonly string[];
}
function mayBe({ salts, ions }: Unsafe): string {
  const be = salts.length > 0 ? [`be ${list(salts, OR)}`] : [];
  const hold = ions.length > 0 ? [`hold ${list(ions, OR)}`] : [];
  return [...be, ...hold].join(", or ");
}
const DONE = { flame: "is not put into a flame in class", "heat solid": "is not heated dry in class" };
export const unsafe = (samples: readonly string[], step: keyof typeof DONE, what: Unsafe) =>
  `${list(samples)} may ${mayBe(what)}, which ${DONE[step]}. Ask your teacher before you begin it.`;
export const unsafeCaution = (what: Unsafe, reason: string) =>
  `A sample may ${mayBe(what)}. ${reason} Ask your teacher first.`;
export const bringsTogether = (what: string, reason: string) =>
  `it brings together ${what}: ${reason}. Ask your teacher before you begin it.`;

/** Liquids that no step adds. */
export const BESIDES = {
  leadThrough: "limewater, to lead a gas through",
  limewater: "limewater",
  "acidified manganate(VII) paper": "acidified potassium manganate(VII), for paper",
  "acidified dichromate(VI) paper": "acidified potassium dichromate(VI), for paper",
  "rod with hydrochloric acid": "concentrated hydrochloric acid, for the rod, with your teacher",
  "rod with ammonia": "concentrated ammonia, for the rod, with your teacher",
  wire: "dilute hydrochloric acid, for the wire",
};
/** What is made harmless before a tube is emptied, and what brought it. */
export const HALOGENS = {
  chlorine: { name: "chlorine", because: "chlorine water" },
  iodine: { name: "iodine", because: "iodine solution" },
};
export const thiosulfateFor = (halogen: string) =>
  `sodium thiosulfate, for the ${halogen}, before those tubes are emptied`;
export const putInto = (reagent: string, bottle: string) => `${reagent}, put into the ${bottle} before the first tube`;
/** Behind what no step asks for. */
export const IN_CASE = ", in case";
export const FLAME_TEST = "flame test";

/** Gases: why a way of testing stands ready. */
export const askedFor = (places: readonly string[]) => `asked for in ${places.join(", ")}`;
export const inCaseGives = (cells: readonly string[], gas: string) => `in case ${cells.join(" or ")} gives ${gas}`;
export const NOT_ASKED = "no step asks for it";
export const andMore = (count: number) => `and ${count} more`;

/** Checks before the first test. */
export const CHECKS = {
  read: "Read all the tests to the end before you begin.",
  goggles: "Goggles on, and on until everything is washed.",
  tubes: "Tubes clean, rinsed with deionised water.",
  dryTubes: "Tubes clean, rinsed with deionised water; the tubes for heating solids also dry.",
  burner: (holder: boolean) => `Burner and lighter tried${holder ? ", holder beside the burner" : ""}.`,
  labels: "Each tube labelled with sample and part before it is filled, left to right in the order of the tests.",
  marks: "Fill marks put on the tubes.",
  gases: (kit: readonly string[], papers: boolean) => {
    const words = list(kit);
    return `${words.charAt(0).toUpperCase()}${words.slice(1)} for the gases within reach${papers ? ", papers not yet damp" : ""}.`;
  },
  waste: "Waste bottles and beaker in place, and known: see where each tube goes.",
  keepBack: "A third of each sample kept back until the report is written.",
};
export const GAS_KIT = {
  papers: "papers",
  splints: "splints",
  rods: "rods",
  copperSulfate: "anhydrous copper(II) sulfate",
  limewater: "limewater",
  delivery: "delivery tubes",
};

/** Behind what could spoil an observation. */
export const plannedFor = (minutes: number) => `Planned for it: ${minutes} min.`;
