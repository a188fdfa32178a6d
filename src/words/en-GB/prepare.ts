/** Prepare: what is set out, where it stands, what is checked. Volumes come as text, without their unit. */

export const HEADING = "Prepare";
export const ABOUT = "ten minutes that save thirty";
export const CAUTIONS = "Cautions for the whole bench";
export const TAKE_CARE = "Take care";
export const ALL_CAUTIONS = "All cautions";

export const SET_OUT_HEADING = "Set out";
export const WHAT = "What";
export const USED = "Used";
export const SET_OUT = "Set out";
/** Before its letter. */
export const SAMPLE = "sample";
export const pieces = (count: number) => `${count} small pieces`;
interface Margins {
  spare: string;
  least: string;
  excess: string;
  times: string;
  timesNeutral: string;
  drop: string;
}
/** @param spare per cent; the volumes in cm3 */
export const margins = ({ spare, least, excess, times, timesNeutral, drop }: Margins) =>
  `Set out of each reagent: ${spare} % more than is used, at least ${least} cm³; of each sample a third of ` +
  `what is set out stays back. "In excess" counts as ${excess} cm³, or ${times} times a larger sample, or ${timesNeutral} times what neutralises ` +
  `the acid or alkali in the tube; a drop as ${drop} cm³. Papers and splints are counted without spare.`;

export const TUBES = "Tubes, drawn to one scale";
export const TUBES_NEED_SCRIPT = "Other tubes can be chosen only where JavaScript is on; these are common sizes.";
export const HEIGHTS =
  "Heights are measured from the inside of the bottom. In brackets: from the thinnest to the thickest wall such tubes are made with, remembered and not measured. To be sure, put 1 cm³ of water from a syringe into one of yours, mark where it stands and shift the other marks by as much.";
export const PLACES = "Where each tube stands";
/** Before a warning. */
export const MIND = "Mind:";

export const GASES = "Gases to be ready for";
export const GAS_HEADS = { gas: "Gas", tests: "Tests", from: "From", have: "Have ready" };
export const EMPTIED = "Where each tube is emptied";
export const EMPTIED_ABOUT =
  "Tubes with alkali first, tubes with acid last and a little at a time, in the fume cupboard if a sulfite may be there: acid sets gas free from what is already in the bottle. Leave a waste bottle open until nothing more bubbles.";
export const WASTE_HEADS = { tubes: "Tubes", into: "Into", how: "How" };

export const ORDER = "Order of work";
/** Before how long it takes. */
export const FOR_ONE = "For one person with one burner:";
export const ORDER_LINK = "The order of work, minute by minute";
/** Before the names of the sheets. */
export const TO_PRINT = "To print:";
/** The name of a sheet within a sentence. */
export const within = (name: string) => name.toLowerCase();
export const CHECK = "Check before you begin";
