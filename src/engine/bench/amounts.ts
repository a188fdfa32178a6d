/** Moles of everything in a mixture, dissolved and solid, by species id. */
import type { EquilibriumResult } from "../equilibrium/solve.ts";

export type Amounts = Map<string, number>;

/** All species and solids of an equilibrium, mol. Gas has left. */
export function amountsOf(result: EquilibriumResult): Amounts {
  const amounts: Amounts = new Map();
  result.molality.forEach((molality, id) => {
    amounts.set(id, molality * result.waterKg);
  });
  for (const [id, mol] of result.phases) if (!id.endsWith("(g)")) amounts.set(id, mol);
  return amounts;
}

/** Adds `times` of the amounts in `more`. */
export function addAmounts(to: Amounts, more: Amounts, times = 1): void {
  for (const [id, mol] of more) to.set(id, (to.get(id) ?? 0) + mol * times);
}
