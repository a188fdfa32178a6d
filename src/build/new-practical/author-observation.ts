/** An observation in the short form that authors write: what `practical/observation.ts` reads, the other way round. */
import { GAS_EVIDENCE } from "../../engine/practical/gases.ts";
import type { Observation } from "../../engine/practical.ts";

/** @example authorObservation({ precipitate: { colour: "white", amount: "plain" } }) // { precipitate: "white" } */
export function authorObservation(seen: Observation): string | Record<string, unknown> {
  if (seen.none && seen.gas === undefined && seen.stays === undefined) return "no visible change";
  const { precipitate, gas, residue, flame, ...rest } = seen;
  return {
    ...rest,
    ...(precipitate !== undefined && { precipitate: precipitateOf(precipitate) }),
    ...(gas !== undefined && { gas: gasOf(gas) }),
    ...(residue !== undefined && { residue: residue || "none" }),
    ...(flame !== undefined && { flame: flame || "none" }),
  };
}

function precipitateOf(precipitate: NonNullable<Observation["precipitate"]>): unknown {
  if (precipitate === false) return "none";
  return precipitate.amount === "plain" ? precipitate.colour : precipitate;
}

function gasOf(gas: NonNullable<Observation["gas"]>): unknown {
  if (gas === false) return "none";
  return gas.evidence === GAS_EVIDENCE[gas.formula] ? gas.formula : gas;
}
