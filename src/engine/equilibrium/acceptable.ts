/** Whether a problem can be solved at all, before any iteration: figures that are figures, components that exist, charges that cancel. */
import type { Conditions, EquilibriumProblem } from "./problem.ts";
import { type Database, WATER } from "./species.ts";

/** Net charge, as a part of all charge, that rounding may leave. */
const CHARGE_ROUNDING = 1e-6;

/** The reason why a problem is refused, in words; undefined when it may be solved. */
export function refusal(
  database: Database,
  { totals, waterKg }: EquilibriumProblem,
  conditions: Conditions,
): string | undefined {
  if (!(waterKg > 0 && Number.isFinite(waterKg))) return `found ${waterKg} kg of water, expected more than none`;
  let net = 0;
  let all = 0;
  for (const id in totals) {
    const mol = totals[id];
    if (!Number.isFinite(mol)) return `found ${mol} mol of ${id}, expected a number`;
    if (id === WATER) continue;
    const index = database.componentIndex.get(id);
    if (index === undefined) return `found ${id}, expected basis components only`;
    if (mol < 0 && id !== "H+") return `found ${mol} mol of ${id}, expected none or more`;
    const { charge } = database.components[index];
    net += charge * mol;
    all += Math.abs(charge * mol);
  }
  if (Math.abs(net) > all * CHARGE_ROUNDING)
    return `found a net charge of ${net.toPrecision(3)} mol, expected charges that cancel`;
  const { gases } = conditions;
  for (const id in gases) {
    const atm = gases[id];
    if (!(atm > 0 && Number.isFinite(atm))) return `found ${atm} atm of ${id}, expected more than none`;
  }
  return undefined;
}
