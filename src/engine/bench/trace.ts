/** Everything that happened to one tube during one test: what the eye finds before, during and at the end, and the gas that left. */
import type { EquilibriumResult } from "../equilibrium/solve.ts";
import type { Colour, GasTest } from "../practical.ts";
import type { Amounts } from "./amounts.ts";
import type { AtDrop } from "./at-the-drop.ts";
import type { HeatOutcome } from "./heat/heat-solid.ts";
import type { IndicatorSeen } from "./indicator.ts";
import type { LimewaterSeen } from "./limewater.ts";
import type { Sight, SolidSeen } from "./sight.ts";
import type { Reacted } from "./tube.ts";

export interface GasTestSeen {
  test: GasTest;
  /** Partial pressures above the liquid at that moment, atm. */
  atm: { NH3: number; SO2: number; CO2: number; Cl2: number };
  /** Gas that had left during the test, cm3 at room temperature. */
  left: { CO2: number; SO2: number; H2: number; O2: number; NO: number };
  /** A dry solid is being heated below it. */
  heated?: HeatOutcome;
}

/** A dry sample; `own`: the solids of the constant set that are the same substance. */
export interface DrySample {
  grams: number;
  mol: number;
  own: ReadonlySet<string>;
  colour: Colour;
}

/** The last coloured reagent poured in. */
export interface Poured {
  /** Its own colour and absorbance. */
  solution: Colour;
  absorbance: number;
  /** Its colour when it is only diluted as it is here. */
  diluted: Colour;
  /** How much of it, and what the tube held before, cm3. */
  cm3: number;
  into: number;
  /** Looks taken during the test before it. */
  looks: number;
}

/** Vapours that a cold liquid mostly keeps: those of a bottle carry its own caution. */
export const KEPT_COLD = ["NH3", "Cl2", "Br2", "I2"] as const;
export type KeptCold = (typeof KEPT_COLD)[number];

export interface TestTrace {
  /** The tube when the test began; undefined when it held nothing wet. */
  before: Sight | undefined;
  /** A dry sample in the tube when the test began. */
  dry: DrySample | undefined;
  poured?: Poured;
  during: Sight[];
  /** The tube after each whole drop of an addition counted in drops. */
  drops: Sight[];
  after: Sight | undefined;
  gasTests: GasTestSeen[];
  /** Gas that left during the test, cm3 by formula. */
  bubbles: Map<string, number>;
  /** The part of it that left while the tube was being heated: it comes slowly, and some call it effervescence, some do not. */
  heatedBubbles: number;
  /** What the gas of the test did in limewater it was led through. */
  limewater?: LimewaterSeen;
  indicator?: IndicatorSeen;
  /** Colour given to a flame, when one was tried; false: none of use. */
  flame?: Colour | false;
  /** What heating did to a dry solid. */
  heat?: HeatOutcome;
  /** Gas it set free, mol. */
  heatGas: { CO2: number; SO2: number; all: number };
  /** Largest partial pressure of sulfur dioxide above the liquid at rest during the test, atm. */
  sulfurDioxide: number;
  /** The same of what cold liquids keep, in warmed or boiling tubes only. */
  hot: Record<KeptCold, number>;
  /** Zinc and acid made hydrogen sulfide: how much is not predicted. */
  hydrogenSulfide: boolean;
  /** What fell where a drop landed. */
  atDrop?: AtDrop;
  /** Solids that a change of oxidation state which stops short of half its way may have made as well. */
  inPart: readonly SolidSeen[];
  /** Changes of oxidation state during the test. */
  reactions: Reacted[];
  /** It was warmed, boiled or left to stand. */
  waited: boolean;
  /** Gates that acted during the test. */
  gates: string[];
  /** Solids supersaturated at the end that do not form in minutes. */
  heldBack: string[];
  /** Something was done that the engine has no chemistry for. */
  unknown: boolean;
  /** Amounts of what was brought together in this test (the tube as it was, and each reagent by itself), for the equations. */
  together: Amounts;
  /** The same since the part began: a gas may come from what an earlier test changed silently. */
  partTogether: Amounts;
  /** Amounts of the mixture at the end, and its pH. */
  end: Amounts;
  endPH: number;
  /** The mixture when each solid was at its largest. */
  peak: Map<string, EquilibriumResult>;
}

/** pH of water, which an empty tube is taken to have. */
const NEUTRAL = 7;

/** A trace with nothing in it yet. */
export const emptyTrace = (partTogether: Amounts): TestTrace => ({
  before: undefined,
  dry: undefined,
  during: [],
  drops: [],
  after: undefined,
  gasTests: [],
  bubbles: new Map(),
  heatedBubbles: 0,
  heatGas: { CO2: 0, SO2: 0, all: 0 },
  inPart: [],
  reactions: [],
  sulfurDioxide: 0,
  hydrogenSulfide: false,
  hot: { NH3: 0, Cl2: 0, Br2: 0, I2: 0 },
  waited: false,
  gates: [],
  heldBack: [],
  unknown: false,
  together: new Map(),
  partTogether,
  end: new Map(),
  endPH: NEUTRAL,
  peak: new Map(),
});

/** dm3 a mole of gas takes at room temperature and pressure (24 dm3/mol, school data booklets). */
export const MOLAR_VOLUME_DM3 = 24;
