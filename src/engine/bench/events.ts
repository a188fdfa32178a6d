/** The events behind an observation, each with its number and its net ionic equation. */
import { VISIBILITY } from "../constants/visibility.ts";
import type { GasTest } from "../practical.ts";
import { amountsOf } from "./amounts.ts";
import { limewaterEvents } from "./limewater.ts";
import { metalsOf } from "./metals.ts";
import type { EquationWriter } from "./net-ionic.ts";
import type { BenchEvent } from "./prediction.ts";
import { DOUBTFUL } from "./read-gas.ts";
import type { FateReading, Growth } from "./read-precipitate.ts";
import { toldReactions } from "./redox/told.ts";
import type { GasTestSeen, TestTrace } from "./trace.ts";

/**
 * What happened in a test: solids that formed or dissolved, gases, changes of oxidation state.
 * @param write writes the equations of solids and gases
 */
export function eventsOf(
  trace: TestTrace,
  grown: readonly Growth[],
  fate: FateReading | undefined,
  write: EquationWriter,
): BenchEvent[] {
  const redox = toldReactions(trace.reactions, { before: trace.together, after: trace.end, pH: trace.endPH });
  const told = redox.map(({ equation }) => equation);
  const side = (n: 0 | 1, all: readonly string[]) => (id: string) =>
    all.find((equation) =>
      equation
        .split(" -> ")
        [n]?.split(" + ")
        .some((term) => isOf(term, id)),
    );
  const madeBy = side(1, told);
  const usedBy = side(0, told);
  // A solid that only a step on the way made, and that has gone again, is told by the whole reaction.
  const onTheWay = side(
    1,
    trace.reactions.map(({ equation }) => equation),
  );
  const formed = grown.filter(({ id }) => madeBy(id) !== undefined || onTheWay(id) === undefined);
  const events: BenchEvent[] = formed.map(({ id, gramsPerDm3 }) => ({
    kind: "precipitate forms",
    phase: id,
    gramsPerDm3,
    // A solid that a change of oxidation state makes is told by that reaction.
    equation: madeBy(id) ?? write(id, true, trace.together, withSolid(trace, id)),
  }));
  if (fate && fate.id !== "" && fate.dissolved >= VISIBILITY.worthAnEvent.value && !isReplaced(fate.id, trace)) {
    const equation = usedBy(fate.id) ?? write(fate.id, false, trace.together, trace.end);
    events.push({ kind: "precipitate dissolves", phase: fate.id, dissolved: fate.dissolved, equation });
  }
  for (const [gas, cm3] of trace.bubbles) {
    if (cm3 < VISIBILITY.bubbles.value) continue;
    events.push({
      kind: "gas leaves",
      phase: gas,
      cm3,
      equation: madeBy(gas) ?? write(gas, true, trace.together, trace.end),
    });
  }
  events.push(...gasEvents(trace, told, write));
  for (const { pair, equation, source } of redox) events.push({ kind: "redox", gate: pair, equation, source });
  for (const { equation, celsius, happens, gate } of trace.heat?.stages ?? []) {
    if (happens) events.push({ kind: "heat", equation, celsius, ...(gate && { gate }) });
  }
  if (trace.limewater) events.push(...limewaterEvents(trace.limewater, write));
  if (trace.indicator) events.push({ kind: "indicator", pH: trace.indicator.pH });
  return events;
}

/** True when the metal of a precipitate is found in more of another solid: it was changed, not dissolved. */
function isReplaced(id: string, { before, after }: TestTrace): boolean {
  const own = metalsOf(id);
  const start = new Map(before?.solids.map((solid) => [solid.id, solid.mol]));
  const grown = after?.solids.filter((solid) => solid.mol > (start.get(solid.id) ?? 0) * GROWN) ?? [];
  return grown.some((other) => other.id !== id && metalsOf(other.id).some((metal) => own.includes(metal)));
}
/** More than this many times what there was of a solid: less is rounding. */
const GROWN = 1.01;

/** True when a term of an equation, number and all, is the substance; the form of a solid is not told there. */
const isOf = (term: string, id: string): boolean => term.replace(/^\d+ /, "").trim() === id.replace(/, [^)]*\)$/, ")");

/** Gases found at the mouth of the tube that did not bubble: each once, with its highest pressure. */
function gasEvents(trace: TestTrace, told: readonly string[], write: EquationWriter): BenchEvent[] {
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
    const made = id === "NH3(g)" && told.some((equation) => equation.split("->")[1]?.includes("NH3"));
    const equation = made
      ? "NH3(aq) -> NH3(g)"
      : write(id, true, id === "NH3(g)" ? trace.partTogether : trace.together, trace.end);
    return [{ kind: "gas leaves", phase: id, atm: most, equation }];
  });
}

/** The amounts at the end; what formed and went again is counted as if the tube had been looked at when it was there. */
function withSolid(trace: TestTrace, id: string): TestTrace["end"] {
  const peak = trace.peak.get(id);
  return trace.end.has(id) || !peak ? trace.end : amountsOf(peak);
}
