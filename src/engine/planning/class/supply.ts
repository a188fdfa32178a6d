/** What a class needs, worked out once for one group: the shapes. Strengths and words do not hang on how big the class is. */
import type { SourcedNote } from "../../constants/preparation.ts";

/** One bottle of the store room that will do, and how much of it goes into 1 dm3 of solution. */
export interface Choice {
  /** "copper(II) sulfate pentahydrate" */
  what: string;
  /** mhchem, water of crystallisation included. */
  formula?: string;
  /** Molar mass, g/mol. */
  gPerMol?: number;
  /** For each dm3 made up. */
  perDm3: number;
  unit: "g" | "cm3";
  /** Said before it is opened. */
  care?: string;
  source?: string;
}

/** One thing that goes into a solution: any one of these, the usual first. */
export type Ingredient = Choice[];

/** Most liquid that is measured for each dm3, cm3: of each ingredient the choice that takes most. */
export const measuredPerDm3 = (ingredients: readonly Ingredient[]): number =>
  ingredients.reduce(
    (sum, choices) => sum + Math.max(0, ...choices.map(({ unit, perDm3 }) => (unit === "cm3" ? perDm3 : 0))),
    0,
  );

export interface Recipe {
  /** Empty for what is bought ready, and for a solid that is only weighed out. */
  ingredients: Ingredient[];
  /** How, in a sentence or two. */
  method: string;
}

/** A solution or a solid that each group gets in a bottle of its own. */
export interface Supply {
  kind: "sample" | "reagent";
  /** Written on the bottle: a sample's letter and nothing else, or a reagent with its strength. */
  label: string;
  /** What is in it, for the technician. */
  content: string;
  of: "solution" | "solid";
  /** Used by the tests of one group, cm3 or g, nothing spare. */
  used: number;
  /** Of that, what goes into the waste bottles of the class and not into the group's own, cm3. */
  apart?: number;
  /** Given to a group, cm3 or g: of a sample what the bench plan sets out, a third kept back. Absent for reagents. */
  given?: number;
  recipe: Recipe;
  notes: SourcedNote[];
}

/** Counted things: tubes, papers, pieces of foil. */
export interface Counted {
  what: string;
  perGroup: number;
  /** g of one piece, or in one bottle, where it is weighed. */
  gEach?: number;
  note?: string;
}

/** One kind of waste. */
export interface WasteNeed {
  /** "lead waste bottle"; "waste beaker" for what is neutralised and washed away; "sink, tube by tube" for what is washed away at once. */
  into: string;
  /** In it after one group, what stands there first included, cm3, without rinsing. */
  cm3: number;
  how: string;
  /** What stands in it before the first tube, for one group, cm3. */
  first: { name: string; cm3: number }[];
  /** What the technician knows and the class does not: which of the kinds really get there. */
  truly?: string;
  /** Collected, not washed away. */
  collected: boolean;
}

/** All that one group needs. Goes to the browser as JSON. */
export interface GroupNeeds {
  supplies: Supply[];
  counted: Counted[];
  /** Kept by the teacher, one for the class. */
  withTeacher: string[];
  waste: WasteNeed[];
}
