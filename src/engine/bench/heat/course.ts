/** What happens one after another in a heated tube: always the change with the lowest temperature, as long as the flame reaches it. */
import {
  AIR_GATES,
  BURNER,
  HEAT_GATES,
  type Heating,
  MELT_GATE,
  MELTING_POINTS,
  NITROGEN_MONOXIDE_GATE,
  NOT_TOLD_APART,
} from "../../constants/heating.ts";
import { saltOf } from "../salt.ts";
import { rowOf } from "./figures.ts";
import { makeUpOf } from "./make-up.ts";
import { gas, type HeatReaction, reactionOf, solid } from "./reaction.ts";
import { ROOM, reactionTemperature } from "./temperature.ts";
import { waysOf } from "./ways.ts";

export interface Change {
  reaction: HeatReaction;
  /** Temperature from which it is seen, C. */
  celsius: number;
  happens: boolean;
  /** Id of the gate that set the temperature or the products (constants/heating.ts). */
  gate?: string;
  /** Not all of the solid changes in the minutes of a test. */
  partly: boolean;
  /** Where part of the solid is left, in its own melt: then the tube looks like that melt. */
  inMelt: boolean;
}

export interface Course {
  /** In the order in which they come; those that the flame does not reach stand last. */
  changes: Change[];
  /** Solids at the end, the one most of it is made of first. */
  left: string[];
  /** Every solid that was there at some time. */
  met: string[];
  /** The end looks like the first of `left` only. */
  looksLikeFirst: boolean;
  /** Solids that may change, but for which the constants give no temperature. */
  unsure: string[];
}

/** A solid in the tube and what it does next. */
interface Waiting {
  formula: string;
  next?: Change;
  /** When its change comes, as the tube warms: not before the solid itself is there, C. */
  at: number;
}

/** Changes of a solid in the order in which they come. */
export function courseOf(formula: string, how: Heating): Course {
  const course: Course = { changes: [], left: [], met: [], looksLikeFirst: false, unsure: [] };
  const beyond: Change[] = [];
  let waiting: Waiting[] = [];
  const meet = (found: string, since: number) => {
    for (const part of partsOf(found).filter((each) => !course.met.includes(each))) {
      course.met.push(part);
      const { next, unsure } = nextChange(part, how);
      if (unsure) course.unsure.push(part);
      waiting.push({ formula: part, at: Math.max(since, next?.celsius ?? since), ...(next ? { next } : {}) });
    }
  };
  meet(formula, ROOM);
  while (waiting.length > 0) {
    const first = waiting.reduce((best, one) => (happens(one) && (!happens(best) || one.at < best.at) ? one : best));
    waiting = waiting.filter((one) => one !== first);
    const { next } = first;
    if (next === undefined || !next.happens || next.partly) course.left.push(first.formula);
    if (next === undefined) continue;
    (next.happens ? course.changes : beyond).push(next);
    if (!next.happens) continue;
    course.looksLikeFirst ||= next.inMelt;
    for (const product of next.reaction.to) if (product.state === "s") meet(product.formula, first.at);
  }
  return { ...course, changes: [...course.changes, ...beyond] };
}

const happens = ({ next }: Waiting): boolean => next?.happens === true;

/** A double salt of ammonium, or one without figures, behaves as the two salts it is made of (their heat of mixing is neglected). */
function partsOf(formula: string): string[] {
  const { water, cations, anions } = makeUpOf(formula);
  const single = water > 0 || cations.length < 2 || anions.length !== 1;
  if (single || rowOf(solid(formula)) !== undefined) return [formula];
  return cations.map((cation) => saltOf(cation, anions[0]).formula);
}

/** The change at the lowest temperature; of two that are not told apart, the earlier in the list of ways, which is the simpler. */
function nextChange(formula: string, how: Heating): { next?: Change; unsure: boolean } {
  const ways = waysOf(formula);
  const changes = [...ways.flatMap((way) => timed(way, formula, how)), ...inAir(formula, how)];
  if (changes.length === 0) return { unsure: ways.length > 0 };
  const next = changes.reduce((best, one) => (best.celsius - one.celsius < NOT_TOLD_APART.value ? best : one));
  return { next, unsure: false };
}

function timed(reaction: HeatReaction, formula: string, how: Heating): Change[] {
  const gate = HEAT_GATES.find(
    (one) =>
      one.solid === formula &&
      (one.product === undefined || reaction.to.some((product) => product.formula === one.product)),
  );
  const free = reactionTemperature(reaction);
  if (gate) {
    const celsius =
      gate.kind === "later"
        ? Math.max(gate.celsius, free ?? gate.celsius)
        : Math.min(gate.celsius, free ?? gate.celsius);
    return [change(reaction, celsius, how, { gate: gate.id, partly: gate.partly === true })];
  }
  if (free === undefined) return [];
  const early = meltTemperature(reaction, formula);
  if (early !== undefined && early < free) {
    const partly = free > BURNER[how].sample;
    return [change(reaction, early, how, { gate: MELT_GATE.id, partly, inMelt: partly })];
  }
  const browns = reaction.to.some((product) => product.formula === "NO");
  return [change(reaction, free, how, browns ? { gate: NITROGEN_MONOXIDE_GATE.id } : {})];
}

/** Only the layer on the glass is as hot as the flame makes it: above the sample's own temperature a change stays incomplete. */
function change(reaction: HeatReaction, celsius: number, how: Heating, more: Partial<Change>): Change {
  const { celsius: glass, sample } = BURNER[how];
  return {
    reaction,
    celsius: Math.max(ROOM, celsius),
    happens: celsius <= glass,
    inMelt: false,
    ...more,
    partly: more.partly === true || (celsius > sample && celsius <= glass),
  };
}

/** Where the salt of an alkali metal melts, what it leaves dissolves in the melt. */
function meltTemperature(reaction: HeatReaction, formula: string): number | undefined {
  const melts = MELTING_POINTS[formula];
  const { water, cations } = makeUpOf(formula);
  const alkali = cations.every((cation) => cation === "Li+" || cation === "Na+" || cation === "K+");
  if (melts === undefined || water > 0 || !alkali) return undefined;
  const dilute = reactionTemperature(reaction, MELT_GATE.share);
  return dilute === undefined ? undefined : Math.max(melts, dilute);
}

function inAir(formula: string, how: Heating): Change[] {
  return AIR_GATES.filter((gate) => gate.solid === formula).flatMap((gate) => {
    const reaction = reactionOf([solid(formula), gas("O2")], [solid(gate.becomes)]);
    return reaction ? [{ ...change(reaction, gate.celsius, how, { gate: gate.id }), partly: false }] : [];
  });
}
