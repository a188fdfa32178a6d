/** How much there is of a component in all the species and solids that hold it. */
import { compileDatabase } from "../equilibrium/species.ts";
import type { Amounts } from "./amounts.ts";

/** Everything that holds a component, with moles of it in one mole. */
const holders = new Map<number, [id: string, moles: number][]>();

const { species, phases } = compileDatabase();
for (const { id, nu } of [...species, ...phases]) {
  for (const [index, moles] of nu) if (moles > 0) holders.set(index, [...(holders.get(index) ?? []), [id, moles]]);
}

/** All there is of a component, mol. */
export function totalOf(index: number, amounts: Amounts): number {
  let sum = 0;
  for (const [id, moles] of holders.get(index) ?? []) sum += (amounts.get(id) ?? 0) * moles;
  return sum;
}
