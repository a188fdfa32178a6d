/** The curves of an ion while a reagent is added. Volumes and parts come as text; formulas in mhchem notation. */
import { list } from "./language.ts";

export const pageTitle = (practical: string) => `Curves: ${practical}`;
export const pageAbout = (practical: string) =>
  `Where the ions of "${practical}" are at every drop: solid or dissolved.`;
export const BACK_TO_WALKTHROUGH = "Back to the walkthrough";
export const LEAD =
  "These pictures name the ions; look once your own record is written. Each follows one ion through one tube: how much of it is in a solid, and how much is dissolved, as the reagent goes in. A solid forms once the liquid holds more of its ions than can stay dissolved. It goes again when the reagent binds one of those ions into something that does stay dissolved.";
export const NEEDS_SCRIPT = "Changing a curve needs JavaScript; below is each as the paper has it.";

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
/** "R, a(i) and a(ii): zinc as aqueous sodium hydroxide is added"; of no sample of a paper just what is added to what. */
export const titleOf = (sample: string, cells: readonly string[], ion: string, reagent: string) =>
  `${sample}, ${list(cells)}: ${ion} as ${reagent} is added`;
export const title = (ion: string, reagent: string) => capital(`${ion} as ${reagent} is added`);
/** Tells the curves of a page apart. */
export const placeOf = (sample: string, cells: readonly string[]) => `${sample}, ${cells.join(" and ")}`;
export const place = (ion: string, reagent: string) => `${ion} with ${reagent}`;
export const endOf = (cell: string) => `end of ${cell}`;
export const FIRST_DROPS = "first drops";
/** "0.1 mol/dm3 ZnSO4 with 1 mol/dm3 aqueous sodium hydroxide". */
export const madeUpOf = (salt: string, reagent: string) => `${salt} with ${reagent}`;
/** Before that. */
export const DRAWN_FOR = "Drawn for";
/** Along the axes. */
export const added = (reagent: string) => `cm³ of ${reagent} added`;
export const amountOf = (unit: string, ion: string) => `${unit} of ${ion}`;
/** Behind a species in the key. */
export const KINDS = { solid: "solid", dissolved: "dissolved" };
export const flat = (from: string, to: string) =>
  `From ${from} to ${to} hardly anything changes; it is left out of the picture.`;

/** Looking along it. */
export const look = (reagent: string) => `Look along the curve: drops of ${reagent} added`;
export const SLIDE = " Slide, or use the arrow keys, to go on drop by drop.";
export const OTHER = "other";
export const drops = (cm3: string, count: number) => `${cm3} (${count} ${count === 1 ? "drop" : "drops"})`;

/** The figures. */
export const FIGURES = "The figures";
export const ofPlace = (place: string) => ` of ${place}`;
export const figuresOf = (place: string) => `Figures of ${place}`;
/** Before and behind the name of the ion. */
export const PART_OF_THE = "Part of the";
export const IN_EACH = "in each";
export const DROPS = "drops";

/** Changing it. */
export const CHANGE = "Change it";
export const curveOf = (sample: string) => `: the curve of ${sample}`;
export const saltIn = (sample: string) => `Salt in ${sample}`;
export const OWN = " (the paper's own)";
export const BACK_TO_OWN = "Back to the paper's own";
/** Spoken. */
export const backToOwn = (madeUp: string) => `Back to the paper's own: ${madeUp}.`;
export const drawnFor = (madeUp: string) => `Drawn for ${madeUp}.`;
export const WORKING = "Working it out…";
export const notDrawn = (why: string, madeUp: string) => `Not drawn: ${why}. The curve is still that of ${madeUp}.`;
export const ofSample = (sample: string) => `sample ${sample}`;
export const strengthOf = (what: string) => `Strength of ${what}, mol/dm³`;
export const slider = (what: string) => `Strength of ${what}, slider`;
export const faultStays = (fault: string) => `${fault} The curve stays as it was.`;
export const withPoint = (figure: string) => `Write the figure with a point, not a comma: ${figure}.`;
export const giveStrength = (from: string, to: string) =>
  `Give a strength from ${from} to ${to} mol/dm3, for example ${to}.`;

/** Why there is no curve: half sentences. */
export const REFUSED = {
  tooLong: "the calculation took too long and was stopped",
  notStarted: "the calculation could not be started",
  unreadable: "the calculation gave an answer that cannot be read",
  failed: "the calculation failed",
  notLoaded: "the calculation could not be loaded, so load the page again when the network is back",
};

/** What it shows. A part of the ion: all of it, or so many per cent. */
export const ALL = "all";
/** @param at where it holds what part of the ion; `most`: no more anywhere */
export const appears = (
  reagent: string,
  from: string,
  what: string,
  at: { cm3: string; part: string; ion: string; most: boolean },
) =>
  `${capital(reagent)} turns ${from} into ${what}, which hardly dissolves: a precipitate appears. At ${at.cm3} it holds ${at.part} of the ${at.ion}, ${at.most ? "its most" : "nearly its most"}.`;
export const fromStart = (part: string, ion: string, what: string) =>
  `At the start ${part} of the ${ion} is in the precipitate, ${what}.`;
export const remains = (reagent: string) => `More ${reagent} does not dissolve it: the precipitate remains.`;
export const takesALittle = (reagent: string, part: string, to: string) =>
  `More ${reagent} takes a little of it, ${part}, into ${to}; the eye sees the precipitate remain.`;
export const OTHER_SPECIES = "other species";
/** @param solid it turns into another solid, and does not dissolve; `left`: what is left of it in the end */
export const goes = (reagent: string, what: string, to: string, solid: boolean, left: string) =>
  `More ${reagent} turns ${what} into ${to}, ${solid ? "another solid" : "which stays dissolved: the precipitate goes"}. ${left}`;
export const stillInIt = (part: string, ion: string) => `At the end ${part} of the ${ion} is still in it.`;
export const noneLeft = (from: string) => `From ${from} on there is none left.`;
export const turns = (reagent: string, from: string, to: string) => ` ${capital(reagent)} turns ${from} into ${to}.`;
export const noPrecipitate = (ion: string) => `No precipitate appears: the ${ion} stays dissolved.`;
export const hardlyAny = (ion: string) => `Less than a twentieth of the ${ion} is ever in a precipitate.`;
