/** The bench as it must stand before the first test: the shapes only. */
import type { TubeSize } from "../constants/glassware.ts";
import type { Waste } from "../constants/reagents.ts";
import type { GivenOff } from "../practical.ts";

/** A kind of glassware with the sizes that decide depths. */
export type { TubeSize } from "../constants/glassware.ts";

/** A fill mark: how far up the liquid should stand after a step. */
export interface FillMark {
  /** Total volume up to here, cm3. */
  cm3: number;
  /** Height of the liquid above the inside of the bottom, mm. */
  depthMm: number;
  /** What is added to reach it: "1 cm3 of P", "excess sodium hydroxide". */
  what: string;
  /** Set when a reagent is added in excess: its id, and the most that is added of it here, cm3. */
  excess?: { reagent: string; cm3: number };
}

export interface PlannedTube {
  /** Written on the tube: "P a". */
  label: string;
  sample: string;
  part: string;
  size: TubeSize;
  /** Solid put in first, g: it makes no mark, but a drawing shows it. */
  solidG?: number;
  marks: FillMark[];
  /** Set when the tube is heated: filling must stay below this, cm3. */
  heatingLimitCm3?: number;
  /** Set when it stands ready to receive a gas: what is in it. */
  holds?: "limewater";
}

export interface PlannedReagent {
  id: string;
  name: string;
  concentration?: string;
  /** The same as a number. */
  molPerDm3?: number;
  /** Used in all, cm3. */
  neededCm3: number;
  /** Set out, cm3: with the stated margin, rounded up. */
  setOutCm3: number;
  /** Pieces of a solid reagent to set out, spare included, where it is one. */
  pieces?: number;
  cautions: string[];
}

/** How much of a sample in one form: cm3 of a solution, g of a solid. */
export interface SampleForm {
  of: "solution" | "solid";
  needed: number;
  setOut: number;
}

/** What becomes of some tubes when all is seen. */
export interface WasteRow {
  /** Labels of the tubes, "P a", and what else is emptied: "limewater tubes". */
  tubes: string[];
  /** "lead waste bottle", "waste beaker" for what is washed away later, "sink, tube by tube" for what no beaker should hold. */
  into: string;
  /** The kinds of waste collected in it, that of the bottle first; empty where nothing is collected. */
  kinds: Waste[];
  /** What is added to each tube first. */
  first?: string[];
  /** What is done, in one or two sentences. */
  how: string;
}

export interface BenchPlan {
  tubes: PlannedTube[];
  /** Tubes with limewater for the gases that a step tests in it or leads through it: one for each sample and step. */
  limewater: PlannedTube[];
  reagents: PlannedReagent[];
  /** Volume of each sample solution used, cm3, or mass of solid, g, with what to set out. */
  samples: { sample: string; needed: string; setOut: string; forms: SampleForm[] }[];
  /**
   * Liquids that no step adds but that stand on the bench: limewater, the acid for the wire; used and set out, cm3. `id`: of the reagent, or
   * of the stock where it is used as bought. `into`: the waste bottle it stands in.
   */
  besides: { id: string; what: string; neededCm3: number; setOutCm3: number; because: string; into?: string }[];
  /**
   * Papers, splints, limewater, burner: what, how many, and what to do with them first. `countedApart`: a class counts it by heads, with the
   * bottles, or among the waste, and not by groups. `grams`: what each holds, g.
   */
  extras: { what: string; count: number; grams?: number; prepare?: string; because: string; countedApart?: true }[];
  /** Steps whose gas could harm: gas and the salts it would come from. */
  gases: { cell: string; gas: GivenOff; from: string[]; have: string }[];
  /** Where each tube is emptied afterwards, the tubes that must go into a bottle first. */
  waste: WasteRow[];
  /** Cautions for the whole bench, plain sentences, most serious first. */
  cautions: string[];
  /** Checks before beginning, in order. */
  checks: string[];
  /** Parts that nobody begins before the teacher is asked, with the reason; also among the warnings. */
  askFirst: { part: string; says: string }[];
  /** Warnings: filling above the safe heating limit and the like. */
  warnings: string[];
}
