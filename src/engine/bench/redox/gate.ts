/** Whether a pair that could react does so in the time of a test. */
import { TEMPERATURE } from "../../constants/kinetic-gates.ts";
import { openingSource, type PairGate, pairGates } from "../../constants/redox-gates.ts";
import type { HalfEquation } from "./half-equation.ts";

/** What the gates look at. */
export interface Circumstances {
  pH: number;
  celsius: number;
  molality: ReadonlyMap<string, number>;
  /** mol of each solid present. */
  phases: ReadonlyMap<string, number>;
  /** Something is still being poured in: what is slow waits. */
  pouring?: boolean;
}

export interface Passage {
  /** Part of what could react that does, once where it is below 1. */
  extent: number;
  /** Waits for what is faster. */
  slow?: true;
  /** Goes no further than acid is there. */
  needsAcid?: true;
  source: string;
}

/** How far the pair may react now, or undefined when it does not within minutes. */
export function passage(oxidant: HalfEquation, reductant: HalfEquation, at: Circumstances): Passage | undefined {
  const hot = at.celsius > TEMPERATURE.room.value;
  const gate = gatesOf
    .get(oxidant.couple.id)
    ?.get(reductant.couple.id)
    ?.find((one) => holds(one, at));
  if (gate) {
    const open = gate.opens === "cold" || (gate.opens === "warm" && hot);
    if (!open || (gate.slow && at.pouring)) return undefined;
    return {
      extent: gate.extent ?? 1,
      source: gate.source,
      ...(gate.slow && { slow: true }),
      ...(gate.needsAcid && { needsAcid: true }),
    };
  }
  const rules = [oxidant.couple.oxidises, reductant.couple.isOxidised];
  if (rules.includes("no") || (rules.includes("warm") && !hot)) return undefined;
  return { extent: 1, source: openingSource };
}

/** Whether there are circumstances in which the pair reacts. */
export function mayEverPass(oxidant: HalfEquation, reductant: HalfEquation): boolean {
  if (oxidant.couple.oxidises !== "no" && reductant.couple.isOxidised !== "no") return true;
  return (
    gatesOf
      .get(oxidant.couple.id)
      ?.get(reductant.couple.id)
      ?.some(({ opens }) => opens !== "no") ?? false
  );
}

/** The gates of each pair, by oxidant and reductant, in the order of their table. */
const gatesOf = new Map<string, Map<string, PairGate[]>>();
for (const gate of pairGates) {
  for (const oxidant of gate.oxidants) {
    const others = gatesOf.get(oxidant) ?? new Map<string, PairGate[]>();
    gatesOf.set(oxidant, others);
    for (const reductant of gate.reductants) others.set(reductant, [...(others.get(reductant) ?? []), gate]);
  }
}

function holds({ fromPH, toPH, besides, free }: PairGate, { pH, molality, phases }: Circumstances): boolean {
  if (fromPH !== undefined && pH < fromPH) return false;
  if (toPH !== undefined && pH > toPH) return false;
  if (besides && !besides.some((solid) => phases.has(solid))) return false;
  return free === undefined || (molality.get(free.id) ?? 0) >= free.molality;
}
