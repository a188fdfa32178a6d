/** Solids in sight if a change of oxidation state that stops short of half its way is carried as far as it goes. */
import { VISIBILITY } from "../constants/visibility.ts";
import type { EquilibriumResult, Solver } from "../equilibrium/solve.ts";
import { stopsShort } from "./redox/stops-short.ts";
import { METALS } from "./redox/substances.ts";
import { look, type Sight, type SolidSeen } from "./sight.ts";
import type { Tube } from "./tube.ts";

/** Those not in sight as it is. Beside pieces of a metal, which has gates of its own, none. */
export function madeInPart(
  tube: Tube,
  { pH, molality, phases }: EquilibriumResult,
  seen: Sight,
  solve: Solver,
): SolidSeen[] {
  const { contents, waterKg, celsius, air, pairs } = tube;
  if (METALS.some((metal) => metal in contents)) return [];
  const reaction = stopsShort({ contents, waterKg, pH, molality, phases, celsius, air, acted: pairs });
  if (!reaction) return [];
  const totals = { ...contents };
  for (const [id, moles] of Object.entries(reaction.change)) totals[id] = (totals[id] ?? 0) + moles * reaction.turns;
  const then = solve({ totals, waterKg }, { celsius }, tube.start);
  if (!then.converged) return [];
  return look(then).solids.filter(
    ({ id, gramsPerDm3 }) => gramsPerDm3 >= VISIBILITY.unseen.value && !seen.solids.some((solid) => solid.id === id),
  );
}
