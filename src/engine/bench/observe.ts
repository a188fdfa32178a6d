/** From a trace to the observation a person would record, with every reading that is acceptable, and the events behind it. */
import { ALUMINIUM_IN_ALKALI, REDOX_GATES, SLOW_SOLIDS, SOLID_TO_SOLID } from "../constants/kinetic-gates.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import { type GasTest, type Observation, sameColour } from "../practical.ts";
import { netIonicEquation } from "./net-ionic.ts";
import type { BenchEvent, Prediction } from "./prediction.ts";
import { DOUBTFUL, effervescenceReadings, gasesGivenOff, gasReadings } from "./read-gas.ts";
import {
  type FateReading,
  fateReading,
  type Growth,
  growths,
  precipitateReadings,
  staysItself,
} from "./read-precipitate.ts";
import { colourTogether } from "./sight.ts";
import type { GasTestSeen, TestTrace } from "./trace.ts";

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
  const different = new Map(readings.map((reading) => [JSON.stringify(reading), reading]));
  return {
    readings: [...different.values()],
    events: eventsOf(trace, grown, fate),
    ...(trace.after && { solution: trace.after.solution }),
    gases: gasesGivenOff(trace),
    gates: [...trace.gates, ...slowGates(grown), ...stayingGate(trace)],
    heldBack: trace.heldBack,
  };
}

/** Gates of the solids that form only slowly. */
const slowGates = (grown: readonly Growth[]): string[] =>
  SLOW_SOLIDS.flatMap(({ id, solid }) => (grown.some((growth) => growth.id === solid) ? [id] : []));

/** The gate that keeps a given solid from turning into another, where equilibrium would have it so. */
function stayingGate(trace: TestTrace): string[] {
  const foreign = trace.after?.solids.some(
    ({ id, gramsPerDm3 }) => !trace.dry?.own.has(id) && gramsPerDm3 >= VISIBILITY.visible.value,
  );
  return foreign && staysItself(trace) ? [SOLID_TO_SOLID.id] : [];
}

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
    const before = trace.dry?.colour ?? colourTogether(seenBefore);
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

/** Part of a precipitate that must dissolve before it is told as an event: what a person would notice. */
const WORTH_AN_EVENT = 0.25;

function eventsOf(trace: TestTrace, grown: readonly Growth[], fate: FateReading | undefined): BenchEvent[] {
  const redox = REDOX_GATES.filter(({ id }) => trace.gates.includes(id));
  const told = redox.map(({ equation }) => equation);
  const gateOf = (id: string) => redox.find(({ equation }) => equation.includes(withoutForm(id)));
  const events: BenchEvent[] = grown.map(({ id, gramsPerDm3 }) => ({
    kind: "precipitate forms",
    phase: id,
    gramsPerDm3,
    // A solid that a change of oxidation state makes is told by that reaction.
    equation: gateOf(id)?.equation ?? netIonicEquation(id, true, trace.together, withSolid(trace, id)),
  }));
  // Where another solid takes its place, a precipitate is changed, not dissolved.
  if (fate && fate.id !== "" && fate.dissolved >= WORTH_AN_EVENT && grown.every(({ id }) => id === fate.id)) {
    const equation = netIonicEquation(fate.id, false, trace.together, trace.end);
    events.push({ kind: "precipitate dissolves", phase: fate.id, dissolved: fate.dissolved, equation });
  }
  for (const [gas, cm3] of trace.bubbles) {
    if (cm3 < VISIBILITY.bubbles.value) continue;
    events.push({
      kind: "gas leaves",
      phase: gas,
      cm3,
      equation: netIonicEquation(gas, true, trace.partTogether, trace.end),
    });
  }
  events.push(...gasEvents(trace, told));
  if (trace.hydrogen) events.push({ kind: "gas leaves", phase: "H2(g)", equation: ALUMINIUM_IN_ALKALI.equation });
  for (const { id, equation } of redox) events.push({ kind: "redox", gate: id, equation });
  return events;
}

const withoutForm = (id: string): string => id.replace(/, [^)]*\)$/, ")");

/** Gases found at the mouth of the tube that did not bubble: each once, with its highest pressure. */
function gasEvents(trace: TestTrace, told: readonly string[]): BenchEvent[] {
  const found = [
    {
      id: "NH3(g)",
      limit: VISIBILITY.ammonia.value,
      shown: (test: GasTest) => test === "damp red litmus",
      atm: (each: GasTestSeen) => each.atm.NH3,
    },
    {
      id: "SO2(g)",
      limit: VISIBILITY.sulfurDioxide.value,
      shown: (test: GasTest) => test !== "damp red litmus",
      atm: (each: GasTestSeen) => each.atm.SO2,
    },
  ];
  return found.flatMap(({ id, limit, shown, atm }): BenchEvent[] => {
    const most = Math.max(0, ...trace.gasTests.filter((each) => shown(each.test)).map(atm));
    if (most < limit / DOUBTFUL || (trace.bubbles.get(id) ?? 0) >= VISIBILITY.bubbles.value) return [];
    const made = told.some((equation) => equation.includes("NH3")) && id === "NH3(g)";
    const equation = made ? "NH3(aq) -> NH3(g)" : netIonicEquation(id, true, trace.partTogether, trace.end);
    return [{ kind: "gas leaves", phase: id, atm: most, equation }];
  });
}

/** The amounts at the end; what formed and went again is counted as if the tube had been looked at when it was there. */
function withSolid(trace: TestTrace, id: string): TestTrace["end"] {
  return trace.end.has(id) ? trace.end : (trace.peak.get(id) ?? trace.end);
}
