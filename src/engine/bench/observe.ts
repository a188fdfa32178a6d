/** From a trace to the observation a person would record, with every reading that is acceptable, and the events behind it. */
import { VISIBILITY } from "../constants/visibility.ts";
import type { Observation } from "../practical.ts";
import { netIonicEquation } from "./net-ionic.ts";
import type { BenchEvent, Prediction } from "./prediction.ts";
import { effervesces, gasesGivenOff, gasReadings } from "./read-gas.ts";
import { fateReading, growths, precipitateReadings } from "./read-precipitate.ts";
import type { TestTrace } from "./trace.ts";

/** Most readings kept for one test; borderline cases multiply, and beyond this they mean "anything goes". */
const MOST_READINGS = 6;

/** What would be recorded for a test, and why. */
export function observe(trace: TestTrace): Prediction {
  const grown = growths(trace);
  const newSolids = precipitateReadings(grown);
  const fate = fateReading(trace);
  const bubbles = effervesces(trace);
  const gases = trace.gasTests.map(gasReadings);
  const gasOptions = gases.find((options) => options.some((gas) => gas !== false)) ?? gases[0] ?? [undefined];
  const solution = solutionSeen(trace);

  const readings: Observation[] = [];
  for (const precipitate of newSolids) {
    for (const end of fateOptions(precipitate !== false, fate?.readings, trace)) {
      for (const gas of gasOptions) {
        const reading: Observation = {};
        if (precipitate !== false) reading.precipitate = precipitate;
        if (end !== undefined) reading.fate = end;
        if (solution !== undefined && (end === "dissolves" || solution.worthSaying)) reading.solution = solution.colour;
        if (bubbles) reading.effervescence = true;
        if (gas !== undefined) reading.gas = gas;
        if (trace.flame !== undefined) reading.flame = trace.flame;
        readings.push(Object.keys(reading).length === 0 ? { none: true } : reading);
      }
    }
  }
  return {
    readings: readings.slice(0, MOST_READINGS),
    events: eventsOf(trace, grown, fate),
    gases: gasesGivenOff(trace),
    gates: trace.gates,
    heldBack: trace.heldBack,
  };
}

/** A precipitate formed in this very test "remains" without saying so; its fate is told only when it goes again. */
function fateOptions(formedNow: boolean, fates: Observation["fate"][] | undefined, trace: TestTrace) {
  if (!fates) return [undefined];
  const wasThere =
    trace.dry !== undefined ||
    (trace.before?.solids ?? []).some(({ gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.visible.value);
  if (wasThere && !formedNow) return fates;
  if (wasThere) return fates;
  return formedNow ? fates.map((fate) => (fate === "remains" ? undefined : fate)) : [undefined];
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

function eventsOf(
  trace: TestTrace,
  grown: ReturnType<typeof growths>,
  fate: ReturnType<typeof fateReading>,
): BenchEvent[] {
  const events: BenchEvent[] = [];
  for (const { id, gramsPerDm3 } of grown) {
    events.push({
      kind: "precipitate forms",
      phase: id,
      gramsPerDm3,
      equation: netIonicEquation(id, true, trace.together, withSolid(trace, id)),
    });
  }
  if (fate && fate.id !== "" && fate.dissolved > 0.05) {
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
