/** A solid heated dry in a hard-glass tube: what comes off, what is left, what it looks like. */
import {
  BURNER,
  CRACKLES,
  HARMFUL_TRACE,
  type Heating,
  MELTING_POINTS,
  NOT_HEATED,
  SETTLES_FROM,
  TURNS_DAMP,
  WHITE_FUMES,
} from "../../constants/heating.ts";
import { GASES, type GivenOff, HARMFUL_GASES } from "../../practical/gases.ts";
import type { Colour, Gas } from "../../practical.ts";
import { RECOMBINES } from "./ammonium.ts";
import { type Change, type Course, courseOf } from "./course.ts";
import { rowOf } from "./figures.ts";
import { looks } from "./looks.ts";
import { makeUpOf } from "./make-up.ts";
import { oxideOf } from "./oxide-series.ts";
import { gas, reactionOf, solid } from "./reaction.ts";
import { gasPressure } from "./temperature.ts";

export interface HeatStage {
  /** Balanced, mhchem with states. */
  equation: string;
  /** Temperature from which it is seen, C. */
  celsius: number;
  happens: boolean;
  /** Id of a gate of constants/heating.ts that acted. */
  gate?: string;
}

export interface HeatOutcome {
  /** Why this solid is not heated in class. Then nothing happens: no gas, and the solid is the residue. */
  refused?: string;
  /** In the order in which they come; those that the flame does not reach stand last. */
  stages: HeatStage[];
  /** Gases a practical can show, in the order in which they come. */
  gases: Gas[];
  /** Gases and vapours a practical does not test for: "SO3", "N2O", "I2", ... */
  otherGases: string[];
  /** Gases that can harm and of which a little comes from a solid that is left as it is: for cautions, not for observations. */
  traces: GivenOff[];
  /** Colour of the gases and vapours that have one. */
  vapours: Colour[];
  /** Null when nothing is left in the hot part. Several solids are joined by " + ", the one most of it is made of first. */
  residue: { hot: Colour; cold: Colour; formula: string } | null;
  /** On the cool wall. */
  sublimate?: { colour: Colour; formula: string };
  /** The same of a little that settles while most stays where it is: it may or may not be seen. */
  maySettle?: { colour: Colour; formula: string };
  /** White fumes may be seen: of a gas that damp air takes up, or of a salt that comes together again above the tube. */
  mayFume: boolean;
  /** A melt is seen at some time. */
  melts: boolean;
  /** Taken from a jar that has been opened it holds a little water, which may or may not be seen to leave. */
  damp: boolean;
  crackles: boolean;
  /** Solids that may change further, but for which the constants give no temperature: say so instead of "no change". */
  unsure: string[];
}

/**
 * Heats a solid.
 *
 * Method: see temperature.ts (which change goes at which temperature) and constants/heating.ts (burner, gates). Nothing in it knows
 * any published observation.
 *
 * @param formula mhchem, as weighed, water of crystallisation included.
 * @throws {FormulaError} for a formula that cannot be read; {UnknownSolidError} for a solid without a row in the constants.
 * @example heatSolid("CaCO3", "strongly").gases // []
 */
export function heatSolid(formula: string, how: Heating): HeatOutcome {
  const refused = refusalOf(formula);
  const course = courseOf(formula, how);
  if (refused === undefined) return outcomeOf(formula, course, how);
  const changes = course.changes.map((one) => ({ ...one, happens: false, gate: NOT_IN_CLASS }));
  const untouched: Course = { ...course, changes, left: [formula], met: [], looksLikeFirst: true };
  const { cold } = looks(untouched, BURNER[how].sample);
  return {
    ...outcomeOf(formula, untouched, how),
    refused,
    residue: { formula, hot: cold, cold },
    crackles: false,
  };
}

/** Stands as the gate of every stage of a refused solid. */
const NOT_IN_CLASS = "not-in-class";

function refusalOf(formula: string): string | undefined {
  const { cations, anions } = makeUpOf(formula);
  return NOT_HEATED.find(({ ions }) => ions.every((ion) => cations.includes(ion) || anions.includes(ion)))?.reason;
}

/** What would happen, a refusal left aside: for checks against references, never for a page. */
export const heatRegardless = (formula: string, how: Heating): HeatOutcome =>
  outcomeOf(formula, courseOf(formula, how), how);

function outcomeOf(formula: string, course: Course, how: Heating): HeatOutcome {
  const { sample } = BURNER[how];
  const happened = course.changes.filter(({ happens }) => happens);
  const given = [...new Set(happened.flatMap(gasesOf))];
  const sublimate = happened.map(sublimateOf).find((one) => one !== undefined);
  const maySettle = sublimate ? undefined : settlingOf(course, how);
  const vapours = given.flatMap((each) => rowOf(gas(each))?.cold ?? []);
  return {
    stages: course.changes.map(({ reaction, celsius, happens, gate }) => ({
      equation: reaction.equation,
      celsius,
      happens,
      ...(gate === undefined ? {} : { gate }),
    })),
    gases: given.filter(isShown),
    otherGases: given.filter((each) => !isShown(each)),
    traces: tracesOf(formula, course, how),
    vapours,
    residue: course.left.length === 0 ? null : { ...looks(course, sample), formula: course.left.join(" + ") },
    ...(sublimate === undefined ? {} : { sublimate }),
    ...(maySettle === undefined ? {} : { maySettle }),
    mayFume: given.some((each) => WHITE_FUMES.of.some((one) => one === each)) || isAmmonium(sublimate?.formula),
    melts: course.met.some((one) => meltsBefore(one, course.changes, sample)),
    damp: TURNS_DAMP.includes(formula),
    crackles: CRACKLES.includes(formula),
    unsure: course.unsure,
  };
}

/**
 * Harmful gases of changes that the flame does not bring about but that have begun, read from their pressure at the glass. Steam takes a
 * little hydrogen chloride from a chloride as its hydrate dries. Hot sulfur trioxide is sulfur dioxide and oxygen in part (half of it near
 * 780 C at 1 atm, from memory).
 */
function tracesOf(formula: string, { changes }: Course, how: Heating): GivenOff[] {
  const happened = changes.filter(({ happens }) => happens);
  const begun = changes.filter(({ reaction, happens, gate }) => {
    return !happens && gate === undefined && isHarmful(gasPressure(reaction, BURNER[how].celsius));
  });
  const given = begun.flatMap(gasesOf);
  if ([...given, ...happened.flatMap(gasesOf)].includes("SO3")) given.push("SO2");
  if ((happened.length > 0 || TURNS_DAMP.includes(formula)) && isHarmful(acidInSteam(formula))) given.push("HCl");
  return HARMFUL_GASES.filter((each) => given.includes(each));
}

const isHarmful = (atm = 0): boolean => atm >= HARMFUL_TRACE.value;

/** Hydrogen chloride in the steam of a drying or damp chloride, atm: steam of 1 atm over the dry salt, as hot as a gentle flame; later there is none. */
function acidInSteam(formula: string): number | undefined {
  const { water, dry, cations, anions } = makeUpOf(formula);
  if (
    (water === 0 && !TURNS_DAMP.includes(formula)) ||
    cations.length !== 1 ||
    anions.length !== 1 ||
    anions[0] !== "Cl-"
  )
    return undefined;
  const reaction = reactionOf([solid(dry), gas("H2O")], [solid(oxideOf(cations[0])), gas("HCl")]);
  return reaction && gasPressure(reaction, BURNER.gently.celsius);
}

const isShown = (formula: string): formula is Gas => (GASES as readonly string[]).includes(formula);

/** Gases as they reach the mouth of the tube: nitrogen monoxide has browned on the way. */
function gasesOf({ reaction }: Change): string[] {
  const leaving = reaction.to.filter(({ state }) => state === "g").map(({ formula }) => formula);
  return leaving.filter((formula) => formula !== "S").map((formula) => (formula === "NO" ? "NO2" : formula));
}

/** Ammonia and a hydrogen halide meet again as the salt; iodine and sulfur settle as they are. */
function sublimateOf({ reaction }: Change): HeatOutcome["sublimate"] {
  const [first] = reaction.from;
  const recombines = reaction.to.some(({ formula }) => RECOMBINES.includes(formula)) && isAmmonium(first.formula);
  const settles = reaction.to.find(({ formula, state }) => state === "g" && rowOf(solid(formula)) !== undefined);
  const formula = recombines ? first.formula : settles?.formula;
  const colour = formula === undefined ? undefined : rowOf(solid(formula))?.cold;
  return formula === undefined || colour === undefined ? undefined : { colour, formula };
}

/** What a change that the flame does not bring about has begun to carry over. */
const settlingOf = ({ changes }: Course, how: Heating): HeatOutcome["sublimate"] =>
  changes
    .filter(
      ({ reaction, happens, gate }) =>
        !happens && gate === undefined && (gasPressure(reaction, BURNER[how].celsius) ?? 0) >= SETTLES_FROM.value,
    )
    .map(sublimateOf)
    .find((one) => one !== undefined);

const isAmmonium = (formula: string | undefined): boolean =>
  formula !== undefined && makeUpOf(formula).cations.includes("NH4+");

function meltsBefore(formula: string, changes: readonly Change[], sample: number): boolean {
  const melts = MELTING_POINTS[formula];
  const own = changes.find(({ reaction }) => reaction.from[0].formula === formula);
  return melts !== undefined && melts <= sample && (own === undefined || melts <= own.celsius);
}
