/** The colour an indicator takes in a drop of the liquid. */
import { BLEACHES, FROM_AIR, INDICATORS, type Indicator, NEAR_EDGE } from "../constants/indicators.ts";
import { TEMPERATURE } from "../constants/kinetic-gates.ts";
import type { Solver } from "../equilibrium/solve.ts";
import { WATER } from "../equilibrium/species.ts";
import type { Colour } from "../practical.ts";
import type { Components } from "./composition.ts";
import { METALS } from "./redox/substances.ts";
import { NoEquilibrium, settle, type Tube } from "./tube.ts";

export interface IndicatorSeen {
  /** Of the liquid as it is. */
  pH: number;
  /** Colours that could be recorded, the likeliest first. */
  colours: Colour[];
}

/** Colours of an indicator at a pH, the one whose band holds it first, then those of bands whose edge is near. */
export function coloursAt(indicator: Indicator, pH: number): Colour[] {
  const { bands } = INDICATORS[indicator];
  const near = bands.filter(({ below }, index) => {
    const above = bands[index - 1]?.below ?? Number.NEGATIVE_INFINITY;
    return pH < below + NEAR_EDGE.value && pH >= above - NEAR_EDGE.value;
  });
  const own = bands.find(({ below }) => pH < below);
  return [...new Set([own, ...near].flatMap((band) => band?.colour ?? []))];
}

/**
 * Touches the indicator with a drop of the liquid, which cools on the way. Undefined when something in it bleaches the indicator.
 * @throws NoEquilibrium when the solver gives up
 */
export function tryIndicator(indicator: Indicator, tube: Tube, solve: Solver): IndicatorSeen | undefined {
  const { molality } = settle(tube, solve);
  const bleaching = BLEACHES.species.reduce((sum, id) => sum + (molality.get(id) ?? 0), 0);
  if (bleaching >= BLEACHES.from) return undefined;
  const pH = coldPH(tube, 0, solve);
  const aired = coldPH(tube, FROM_AIR.value, solve);
  return { pH, colours: [...new Set([...coloursAt(indicator, pH), ...coloursAt(indicator, aired)])] };
}

/** pH at room temperature with so much carbon dioxide from the air dissolved, mol/dm3; nothing leaves the drop. */
function coldPH({ contents, waterKg, opened }: Tube, fromAir: number, solve: Solver): number {
  const totals = Object.fromEntries(Object.entries(contents).filter(([id]) => !isMetal(id)));
  for (const [id, count] of Object.entries(CARBON_DIOXIDE)) {
    totals[id] = (totals[id] ?? 0) + count * fromAir * waterKg;
  }
  const outcome = solve({ totals, waterKg }, { celsius: TEMPERATURE.room.value, alsoAllowed: opened });
  if (!outcome.converged) throw new NoEquilibrium(outcome.reason);
  return outcome.pH;
}

const CARBON_DIOXIDE: Components = { "CO3^2-": 1, "H+": 2, [WATER]: -1 };
const isMetal = (id: string): boolean => (METALS as readonly string[]).includes(id);
