/** From a trace to the observation a person would record, with every reading that is acceptable, and the events behind it. */
import { SLOW_SOLIDS } from "../constants/kinetic-gates.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import { type Observation, sameColour } from "../practical.ts";
import { netIonicEquation } from "./net-ionic.ts";
import type { BenchEvent, Prediction } from "./prediction.ts";
import { effervescenceReadings, gasesGivenOff, gasReadings } from "./read-gas.ts";
import { type FateReading, fateReading, type Growth, growths, precipitateReadings } from "./read-precipitate.ts";
import { colourTogether } from "./sight.ts";
import type { TestTrace } from "./trace.ts";

/** Most readings kept for one test; borderline cases multiply, and beyond this they mean "anything goes". */
const MOST_READINGS = 6;

/** What would be recorded for a test, and why. */
export function observe(trace: TestTrace): Prediction {
  const grown = growths(trace);
  const fate = fateReading(trace);
  const gases = trace.gasTests.map(gasReadings);
  const gasOptions = gases.find((options) => options.some((gas) => gas !== false)) ?? gases[0] ?? [undefined];
  const solution = solutionSeen(trace);

  const readings: Observation[] = [];
  for (const solid of solidReadings(trace, grown, fate)) {
    for (const effervescence of effervescenceReadings(trace)) {
      for (const gas of gasOptions) {
        const reading: Observation = { ...solid };
        if (solution !== undefined && (solid.fate === "dissolves" || solution.worthSaying)) {
          reading.solution = solution.colour;
        }
        if (effervescence) reading.effervescence = true;
        if (trace.flame !== undefined) reading.flame = trace.flame;
        const nothing = Object.keys(reading).length === 0;
        if (gas !== undefined) reading.gas = gas;
        readings.push(nothing && !gas ? { none: true, ...reading } : reading);
      }
    }
  }
  return {
    readings: readings.slice(0, MOST_READINGS),
    events: eventsOf(trace, grown, fate),
    gases: gasesGivenOff(trace),
    gates: [...trace.gates, ...slowGates(grown)],
    heldBack: trace.heldBack,
  };
}

/** Gates of the solids that form only slowly. */
const slowGates = (grown: readonly Growth[]): string[] =>
  SLOW_SOLIDS.flatMap(({ id, solid }) => (grown.some((growth) => growth.id === solid) ? [id] : []));

type SolidReading = Pick<Observation, "precipitate" | "fate">;

/**
 * What could be said of solids. A precipitate that forms in this very test "remains" without saying so. Where one was there already and
 * another of its colour forms, the eye cannot tell them apart: it sees one that remains, or says that one has formed.
 */
function solidReadings(trace: TestTrace, grown: readonly Growth[], fate: FateReading | undefined): SolidReading[] {
  const seenBefore = (trace.before?.solids ?? []).filter(({ gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.visible.value);
  const wasThere = trace.dry !== undefined || seenBefore.length > 0;
  const fates: (Observation["fate"] | undefined)[] = fate?.readings ?? [undefined];
  return precipitateReadings(grown).flatMap((precipitate): SolidReading[] => {
    if (precipitate === false) return wasThere ? fates.map((end) => (end ? { fate: end } : {})) : [{}];
    if (!wasThere) return fates.map((end) => (end && end !== "remains" ? { precipitate, fate: end } : { precipitate }));
    const before = trace.dry ? "white" : colourTogether(seenBefore);
    return sameColour(before, precipitate.colour) ? [{ fate: "remains" }, { precipitate }] : [{ precipitate }];
  });
}

/** A colour is worth saying to have gone when the same liquid, only diluted, would stand this many times above the limit of sight. */
const PLAINLY_COLOURED = 10;

/** The colour of the liquid at the end, and whether it changed by more than dilution. */
function solutionSeen(trace: TestTrace): { colour: Observation["solution"]; worthSaying: boolean } | undefined {
  const { before, after } = trace;
  if (!after) return undefined;
  const first = before ?? trace.during[0];
  if (!first || trace.dry) return { colour: after.solution, worthSaying: after.solution !== "colourless" };
  if (first.solution === after.solution) return { colour: after.solution, worthSaying: false };
  const diluted = (first.absorbance * first.cm3) / after.cm3;
  const hidden = after.solids.some(({ gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.visible.value);
  if (after.solution === "colourless") {
    return { colour: after.solution, worthSaying: !hidden && diluted > VISIBILITY.absorbance.value * PLAINLY_COLOURED };
  }
  return { colour: after.solution, worthSaying: true };
}

/** Part of a precipitate that must dissolve before it is told as an event. */
const WORTH_AN_EVENT = 0.1;

function eventsOf(trace: TestTrace, grown: readonly Growth[], fate: FateReading | undefined): BenchEvent[] {
  const events: BenchEvent[] = [];
  for (const { id, gramsPerDm3 } of grown) {
    events.push({
      kind: "precipitate forms",
      phase: id,
      gramsPerDm3,
      equation: netIonicEquation(id, true, trace.together, withSolid(trace, id)),
    });
  }
  if (fate && fate.id !== "" && fate.dissolved > WORTH_AN_EVENT) {
    events.push({
      kind: "precipitate dissolves",
      phase: fate.id,
      dissolved: fate.dissolved,
      equation: netIonicEquation(fate.id, false, trace.together, trace.end),
    });
  }
  for (const [gas, cm3] of trace.bubbles) {
    if (cm3 < VISIBILITY.bubbles.value) continue;
    events.push({
      kind: "gas leaves",
      phase: gas,
      cm3,
      equation: netIonicEquation(gas, true, trace.together, trace.end),
    });
  }
  for (const { test, atm } of trace.gasTests) {
    for (const gas of ["NH3", "SO2"] as const) {
      const relevant = gas === "NH3" ? test === "damp red litmus" : test !== "damp red litmus";
      if (relevant && atm[gas] > 0) {
        const equation = netIonicEquation(`${gas}(g)`, true, trace.together, trace.end);
        events.push({ kind: "gas leaves", phase: `${gas}(g)`, atm: atm[gas], equation });
      }
    }
  }
  for (const gate of trace.gates) events.push({ kind: "redox", gate });
  return events;
}

/** The amounts at the end; what formed and went again is counted as if the tube had been looked at when it was there. */
function withSolid(trace: TestTrace, id: string): TestTrace["end"] {
  return trace.end.has(id) ? trace.end : (trace.peak.get(id) ?? trace.end);
}
