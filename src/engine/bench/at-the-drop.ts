/**
 * What a drop makes where it lands. There reagent and sample meet in other parts than in the tube, and for a few solids (LOCAL_SOLIDS)
 * what falls there may be seen although the whole mixture, once shaken, would hold none.
 */
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import { DROP_SPREADS, LOCAL_SOLIDS } from "../constants/kinetic-gates.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import type { Solver } from "../equilibrium/solve.ts";
import { type Amounts, addAmounts, amountsOf } from "./amounts.ts";
import type { Components } from "./composition.ts";
import { addAlone } from "./sample.ts";
import { look, type SolidSeen } from "./sight.ts";
import { copyOfTube, pour, settle, type Tube } from "./tube.ts";

export interface AtDrop {
  gate: (typeof LOCAL_SOLIDS)[number];
  solid: SolidSeen;
  /** What met there, and what it became. */
  met: Amounts;
  became: Amounts;
}

/** The solid of a gate that a drop of a solution (mol/dm3) brings down as it spreads in the tube's liquid; undefined for none. */
export function atTheDrop(tube: Tube, perDm3: Readonly<Components>, solve: Solver): AtDrop | undefined {
  if (tube.waterKg <= 0) return undefined;
  const meets = (id: string) => (tube.contents[id] ?? 0) > 0 || (perDm3[id] ?? 0) > 0;
  for (const gate of LOCAL_SOLIDS) {
    if (!gate.of.every(meets)) continue;
    for (const drops of DROP_SPREADS[gate.dissolves]) {
      const { before, met, result } = spread(tube, perDm3, drops * BENCH_PRACTICE.drop.value, solve);
      if (before.pH < (gate.fromPH ?? Number.NEGATIVE_INFINITY)) continue;
      const solid = look(result).solids.find(({ id }) => id === gate.solid);
      if (solid && solid.gramsPerDm3 >= VISIBILITY.plain.value) return { gate, solid, met, became: amountsOf(result) };
    }
  }
  return undefined;
}

/** A drop in so much of the tube's liquid, cm3: that liquid, what met, and what it is then. */
function spread(tube: Tube, perDm3: Readonly<Components>, sampleCm3: number, solve: Solver) {
  const cm3 = BENCH_PRACTICE.drop.value;
  const share = Math.min(1, sampleCm3 / 1000 / tube.waterKg);
  const zone = copyOfTube(tube);
  for (const id of Object.keys(zone.contents)) zone.contents[id] *= share;
  zone.waterKg *= share;
  const met: Amounts = new Map();
  const before = settle(zone, solve);
  addAmounts(met, amountsOf(before));
  addAlone(met, perDm3, cm3, solve);
  pour(zone, perDm3, cm3);
  return { before, met, result: settle(zone, solve) };
}
