/** Figures of preparing for a class: its usual size, bottles, how much is made up. A group is whoever works at one place: one or a pair. */

const COMMON = "common practice, no source";

/** The class a sheet starts from; a reader may choose another. */
export const DEFAULT_CLASS = {
  groups: { value: 12, unit: "1", source: "our choice: 24 students in pairs" },
  sparePercent: { value: 30, unit: "%", source: `${COMMON}: 25 to 50 % spare` },
} as const;

/** What a class may be, so that a slip of the finger is noticed. */
export const CLASS_LIMITS = {
  groups: { least: 1, most: 60, unit: "groups", source: "our choice: more than one laboratory holds" },
  sparePercent: { least: 0, most: 200, unit: "%", source: "our choice" },
  sampleCm3: { least: 1, most: 500, unit: "cm3", source: "our choice" },
  sampleG: { least: 0.1, most: 50, unit: "g", source: "our choice" },
} as const;

/** Bottles by what they hold, cm3. A pair works with one dropper bottle of 10 to 25 cm3. */
export const BOTTLES: readonly { cm3: number; name: string; source: string }[] = [
  { cm3: 10, name: "10 cm3 dropper bottle", source: `${COMMON}: 10 to 25 cm3 for a pair` },
  { cm3: 25, name: "25 cm3 dropper bottle", source: `${COMMON}: 10 to 25 cm3 for a pair` },
  { cm3: 60, name: "60 cm3 bottle with a dropper", source: COMMON },
  { cm3: 125, name: "125 cm3 bottle with a dropper", source: COMMON },
  { cm3: 250, name: "250 cm3 bottle with a dropper", source: COMMON },
];

/** Bottles for waste, cm3. */
export const WASTE_BOTTLES: readonly number[] = [250, 500, 1000, 2500];

/** Steps in which solutions are made up, cm3: exact volumes are not important, and none is made short. Our choice. */
export const MADE_UP: readonly { upTo: number; step: number }[] = [
  { upTo: 100, step: 10 },
  { upTo: 250, step: 25 },
  { upTo: 1000, step: 50 },
  { upTo: Number.POSITIVE_INFINITY, step: 100 },
];

export const CLASS_PRACTICE = {
  /** Less cannot be weighed out well on a balance that shows 0.01 g. */
  leastMadeUp: { value: 50, unit: "cm3", source: "our choice: 0.4 g of silver nitrate, good to 2 % on such a balance" },
  /** Bottles are filled to whole cm3. */
  fillStep: { value: 1, unit: "cm3", source: "our choice" },
  /** No more of a bottle is filled: the dropper and the air above the liquid want room. */
  bottleFill: { value: 0.8, unit: "1", source: `${COMMON}: about a fifth is left empty` },
  /** Water that is there before the rest is made up with it. */
  waterFirst: { value: 0.7, unit: "1", source: `${COMMON}: 700 cm3 for 1 dm3` },
  /** Never more of the room that measured liquids leave, so that they can be rinsed in. */
  waterOfRoom: { value: 0.9, unit: "1", source: `${COMMON}: a little is kept back for rinsing and for the mark` },
  waterStep: { value: 5, unit: "cm3", source: "our choice: what a measuring cylinder shows, rounded down" },
  /** Each tube is rinsed once into the waste, with as much water as it held. */
  wasteWithRinsing: { value: 2, unit: "1", source: COMMON },
  /** A waste bottle is changed before it is full. */
  wasteFill: { value: 0.75, unit: "1", source: COMMON },
} as const;

/** Elements of which a store counts the grams. */
export const SCARCE: readonly { element: string; why: string; source: string }[] = [
  { element: "Ag", why: "the dearest by far: collect and recover what is left", source: COMMON },
  { element: "I", why: "dearer than chlorides and bromides", source: "from memory" },
  { element: "Li", why: "dearer than sodium and potassium salts", source: "from memory" },
];
