/** From a trace to the observation a person would record, with every reading that is acceptable, and the events behind it. */
import {
  FLEETING_COLOURS,
  HEAT_OPENS,
  MAY_DISSOLVE,
  MAY_FALL,
  NAMED_COLOURS,
  SEEN_FIRST,
  SOLID_TO_SOLID,
} from "../constants/kinetic-gates.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import { sameColour } from "../practical/same-colour.ts";
import type { Colour, Observation, Precipitate } from "../practical.ts";
import { alsoSeen } from "./also-seen.ts";
import type { AtDrop } from "./at-the-drop.ts";
import { eventsOf } from "./events.ts";
import { afterWaiting, withinTheTest } from "./later-looks.ts";
import { limewaterReadings } from "./limewater.ts";
import { metalsOf } from "./metals.ts";
import type { EquationWriter } from "./net-ionic.ts";
import type { BenchEvent, Prediction } from "./prediction.ts";
import { brownFumesReadings, effervescenceReadings, gasesGivenOff, gasReadings } from "./read-gas.ts";
import { heatReadings } from "./read-heat.ts";
import { colourLost, coloursInSight, isUnchanged, solutionSeen } from "./read-liquid.ts";
import {
  type FateReading,
  fateReading,
  type Growth,
  growths,
  inPlainSight,
  precipitateReadings,
  staysItself,
} from "./read-precipitate.ts";
import { colourTogether, inSightAtOnce, type Sight } from "./sight.ts";
import type { TestTrace } from "./trace.ts";

/**
 * What would be recorded for a test, and why.
 * @param write writes the equations of what happened
 */
export function observe(trace: TestTrace, write: EquationWriter): Prediction {
  const formed = growths(trace);
  const grown = inSightAtOnce(formed);
  const fate = fateReading(trace, grown);
  const atDrop = onlyAtDrop(trace, grown);
  const gases = [...trace.gasTests.map(gasReadings), ...(trace.limewater ? [limewaterReadings(trace.limewater)] : [])];
  const indicated: (Observation["indicator"] | undefined)[] = trace.indicator?.colours ?? [undefined];
  const gasOptions = gases.find((options) => options.length === 0) ??
    gases.find((options) => options.some((gas) => gas !== false)) ??
    gases[0] ?? [undefined];
  const pairs = gasOptions.flatMap((gas) => indicated.map((indicator) => ({ gas, indicator })));
  const solution = solutionSeen(trace);
  const lost = colourLost(trace);
  const mayGo = mayDissolve(trace);
  const falls = mayFall(trace);
  const ofReactions = (rows: readonly { pair: string; colour: Colour }[]) =>
    rows.filter((row) => trace.reactions.some(({ pair }) => pair === row.pair)).map(({ colour }) => colour);
  const fleeting = ofReactions(FLEETING_COLOURS);
  const named = ofReactions(NAMED_COLOURS);

  const unchanged = isUnchanged(trace);

  const readings: Observation[] = [];
  const starts: Observation[] = trace.heat ? heatReadings(trace.heat) : solidReadings(trace, grown, fate);
  for (const start of starts) {
    for (const effervescence of effervescenceReadings(trace)) {
      for (const { gas, indicator } of pairs) {
        const reading: Observation = { ...start };
        if (effervescence) reading.effervescence = true;
        if (indicator !== undefined) reading.indicator = indicator;
        if (trace.flame !== undefined) reading.flame = trace.flame;
        const nothing = Object.keys(reading).length === 0;
        const colour = solution !== undefined && (start.fate === "dissolves" || solution.worthSaying);
        if (colour) reading.solution = solution.colour;
        if (gas !== undefined) reading.gas = gas;
        for (const namedColour of named) readings.push({ ...reading, solution: namedColour });
        // An excess shows the reagent's colour at the end, and on the way there its drops lost it: either is told.
        if (lost !== undefined) readings.push({ ...reading, solution: lost });
        readings.push(nothing && !colour && !gas ? { none: true, ...reading } : reading);
        if (nothing && colour && !gas && unchanged && lost === undefined) {
          const stays = solution.colour === "colourless" ? undefined : solution.colour;
          readings.push({ none: true, ...(stays && { stays }), ...(gas !== undefined && { gas }) });
        }
        readings.push(...alsoSeen(trace, reading));
        if (mayGo) readings.push({ ...reading, fate: "dissolves", solution: mayGo });
        if (falls) readings.push({ ...start, precipitate: falls, ...(gas !== undefined && { gas }) });
        for (const fleetingColour of fleeting) readings.push({ ...reading, solution: fleetingColour });
      }
    }
  }
  const different = new Map(withFumes(trace, readings).map((reading) => [JSON.stringify(reading), reading]));
  return {
    readings: [...different.values()],
    events: [...(atDrop ? [dropEvent(atDrop, write)] : []), ...eventsOf(trace, grown, fate, write)],
    ...(trace.after && { solution: trace.after.solution }),
    colours: coloursInSight(trace),
    gases: gasesGivenOff(trace),
    gates: [
      ...trace.gates,
      ...(atDrop ? [atDrop.gate.id] : []),
      ...slowGates(formed),
      ...seenFirst(trace, grown).map(({ id }) => id),
      ...afterWaiting(trace).map(({ gate }) => gate),
      ...withinTheTest(trace, grown).map(({ id }) => id),
      ...stayingGate(trace),
    ],
    heldBack: trace.heldBack,
  };
}

/** The colour of the liquid if what is left of the solid had dissolved, as handbooks have it. */
function mayDissolve({ after, end }: TestTrace): Observation["solution"] {
  return MAY_DISSOLVE.find(
    ({ solid, free }) =>
      after?.solids.some(({ id }) => id === solid) && (end.get(free.id) ?? 0) >= (free.molality * after.cm3) / 1000,
  )?.solution;
}

/** The precipitate that may have come down in a clear liquid. */
function mayFall({ after, end, endPH, waited }: TestTrace): Precipitate | undefined {
  if (!after || after.solids.some(({ gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.unseen.value)) return undefined;
  const row = MAY_FALL.find(
    ({ held, toPH }) =>
      (toPH === undefined ? waited : endPH <= toPH) && (end.get(held.id) ?? 0) >= (held.molality * after.cm3) / 1000,
  );
  return row && { colour: row.colour, amount: "plain" };
}

/** Gates of the solids that form only slowly. */
const slowGates = (grown: readonly Growth[]): string[] => grown.flatMap(({ slow }) => slow?.id ?? []);

/** Gates of the solids that have another colour first, as this test makes them, where nothing else has grown. */
function seenFirst({ reactions }: TestTrace, grown: readonly Growth[]) {
  if (grown.length === 0) return [];
  return SEEN_FIRST.filter(
    ({ solid, by }) =>
      grown.every(({ id }) => id === solid) && reactions.some(({ pair }) => pair.startsWith(`${by} with `)),
  );
}

/** What fell where a drop landed; undefined where that precipitate is there anyway, or would pass unseen beside another solid. */
function onlyAtDrop({ atDrop, before, dry }: TestTrace, grown: readonly Growth[]): AtDrop | undefined {
  const isThere = ({ id }: { id: string }) => id === atDrop?.solid.id;
  if (before?.solids.some(isThere) || grown.some(isThere)) return undefined;
  const beside = dry !== undefined || grown.length > 0 || inPlainSight(before).length > 0;
  return atDrop?.gate.dissolves === "when shaken" && beside ? undefined : atDrop;
}

function dropEvent({ gate, solid, met, became }: AtDrop, write: EquationWriter): BenchEvent {
  const passes = gate.dissolves === "when shaken";
  const equation = gate.seenAs?.equation ?? write(solid.id, true, met, became);
  return {
    kind: passes ? "precipitate passes" : "precipitate forms",
    phase: gate.seenAs?.solid ?? solid.id,
    ...(!passes && { gramsPerDm3: solid.gramsPerDm3 }),
    gate: gate.id,
    ...(equation && { equation }),
  };
}

/** The same with brown fumes, where some are seen: beside the likeliest reading alone, with bubbles and without, or a list grows too long. */
function withFumes(trace: TestTrace, readings: readonly Observation[]): Observation[] {
  const fumes = trace.heat ? [undefined] : brownFumesReadings(trace);
  if (!fumes.includes("brown")) return [...readings];
  const fuming = effervescenceReadings(trace).flatMap((bubbles): Observation[] => {
    const likeliest = readings.find(({ effervescence = false }) => effervescence === bubbles);
    const { none: _, stays: __, ...seen } = likeliest ?? {};
    return likeliest ? [{ ...seen, fumes: "brown" }] : [];
  });
  return fumes[0] === "brown" ? [...fuming, ...readings] : [...readings, ...fuming];
}

/** What could be recorded of a new precipitate: as it is seen first, then as it is minutes later. */
function newSolids(trace: TestTrace, grown: readonly Growth[]): (Precipitate | false)[] {
  const atDrop = onlyAtDrop(trace, grown);
  if (grown.length === 0 && atDrop?.gate.dissolves === "slowly") {
    const { colour } = atDrop.solid;
    return [{ colour, amount: "plain" }, { colour, amount: "slight" }, false];
  }
  const first = seenFirst(trace, grown);
  const later = withinTheTest(trace, grown);
  const told = precipitateReadings(grown).flatMap((precipitate): (Precipitate | false)[] => {
    if (precipitate === false) return [false];
    const as = (colours: readonly Colour[]) => colours.map((colour) => ({ ...precipitate, colour }));
    return [...as(first.flatMap(({ colours }) => colours)), precipitate, ...as(later.map(({ colour }) => colour))];
  });
  if (mayStayAsItIs(trace, grown)) return [false, ...told];
  return passes(trace) ? [...told, false] : told;
}

/**
 * Whether what has grown is another solid of a metal whose precipitate was there, made by warmth or time alone. Such a precipitate mostly
 * stays as it is for minutes; those that heat turns within them have a gate of their own.
 */
function mayStayAsItIs({ before, after, reactions }: TestTrace, grown: readonly Growth[]): boolean {
  if (!before || !after || grown.length === 0 || reactions.length > 0 || after.cm3 > before.cm3) return false;
  const had = before.solids.flatMap(({ id }) => metalsOf(id));
  return grown.every(
    ({ id }) => HEAT_OPENS.every(({ solid }) => solid !== id) && metalsOf(id).some((metal) => had.includes(metal)),
  );
}

/** The gate that keeps a given solid from turning into another, where equilibrium would have it so. */
function stayingGate(trace: TestTrace): string[] {
  const foreign = trace.after?.solids.some(
    ({ id, gramsPerDm3 }) => !trace.dry?.own.has(id) && gramsPerDm3 >= VISIBILITY.visible.value,
  );
  return foreign && staysItself(trace) ? [SOLID_TO_SOLID.id] : [];
}

/** A precipitate that the next drops take again before it has been looked at. */
function passes({ drops, before, after }: TestTrace): boolean {
  const inSight = (sight: Sight | undefined) =>
    sight?.solids.some(({ gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.visible.value) ?? false;
  if (drops.length < 2 || inSight(before) || inSight(after)) return false;
  return drops.filter(inSight).length <= VISIBILITY.passing.value;
}

type SolidReading = Pick<Observation, "precipitate" | "fate">;

/**
 * What could be said of solids. A precipitate that forms in this very test "remains" without saying so. Where one was there already and
 * another of its colour forms, the eye cannot tell them apart: it sees one that remains, or says that one has formed.
 */
function solidReadings(trace: TestTrace, grown: readonly Growth[], fate: FateReading | undefined): SolidReading[] {
  const seenBefore = inPlainSight(trace.before);
  const wasThere = trace.dry !== undefined || seenBefore.length > 0;
  const fates: (Observation["fate"] | undefined)[] = fate?.readings ?? [undefined];
  const also = grown.length > 0 || trace.inPart.length === 0 ? [] : precipitateReadings(trace.inPart);
  const told = [...newSolids(trace, grown), ...also].flatMap((precipitate): SolidReading[] => {
    if (precipitate === false) return wasThere ? fates.map((end) => (end ? { fate: end } : {})) : [{}];
    if (!wasThere) return fates.map((end) => (end && end !== "remains" ? { precipitate, fate: end } : { precipitate }));
    // Both may be gone at the end: then that is what is told, with or without the one that came in between.
    if (!trace.dry && fates.includes("dissolves"))
      return fates.flatMap((end) => [{ fate: end }, { precipitate, fate: end }]);
    const before = trace.dry?.colour ?? colourTogether(seenBefore);
    return sameColour(before, precipitate.colour) ? [{ fate: "remains" }, { precipitate }] : [{ precipitate }];
  });
  const passing = passingReadings(onlyAtDrop(trace, grown));
  const later = afterWaiting(trace).map(({ precipitate }) => ({ precipitate }));
  return [...told, ...passing, ...ofDoubtful(trace), ...later];
}

/** A solid that falls where a drop lands and is gone when shaken may be written down, with the word that it dissolves or without. */
function passingReadings(atDrop: AtDrop | undefined): SolidReading[] {
  if (atDrop?.gate.dissolves !== "when shaken") return [];
  const precipitate: Precipitate = { colour: atDrop.gate.seenAs?.colour ?? atDrop.solid.colour, amount: "plain" };
  return [{ precipitate }, { precipitate, fate: "dissolves" }];
}

/** What becomes of a precipitate so faint that only some saw it before: those say that it remains, or that it has gone. */
function ofDoubtful({ before, after, dry }: TestTrace): SolidReading[] {
  if (!before || !after || dry) return [];
  const [had, has] = [before, after].map(({ solids }) => solids.reduce((sum, { gramsPerDm3 }) => sum + gramsPerDm3, 0));
  if (had < VISIBILITY.unseen.value || had >= VISIBILITY.visible.value || has >= VISIBILITY.certain.value) return [];
  if (has >= VISIBILITY.unseen.value) return [{ fate: "remains" }];
  // What is only thinned below sight may be said to remain as well.
  const [was, is] = [before, after].map(({ solids }) => solids.reduce((sum, { mol }) => sum + mol, 0));
  const thinned = is >= was * (1 - VISIBILITY.dissolvesBelow.value);
  return [{ fate: "dissolves" }, ...(thinned ? [{ fate: "remains" } as const] : [])];
}
