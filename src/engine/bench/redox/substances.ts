/** What the substances of half-equations are made of, in basis components. */
import { basis, reactions } from "../../constants/log-k/index.ts";
import { parseEquation } from "../../formula/equation.ts";
import type { Components } from "../composition.ts";

/** Metals that lie in the tube as pieces; they are no components of the solution and are counted under their own name. */
export const METALS = ["Al(s)", "Zn(s)"] as const;
/** Oxygen of the air above the tube: as much as is wanted. */
export const AIR = "O2(g)";

const compositions = readCompositions();

function readCompositions(): ReadonlyMap<string, Components> {
  const found = new Map<string, Components>();
  for (const { id } of basis) found.set(id, { [id]: 1 });
  for (const metal of METALS) found.set(metal, { [metal]: 1 });
  for (const row of reactions) {
    const { left, right } = parseEquation(row.reaction);
    const [made, ...beside] = row.phase === "aqueous" ? right : left;
    const parts: Components = {};
    const count = (terms: typeof left, sign: number) => {
      for (const { coefficient, formula } of terms) {
        parts[formula.text] = (parts[formula.text] ?? 0) + sign * coefficient;
      }
    };
    count(row.phase === "aqueous" ? left : right, 1);
    count(beside, -1);
    found.set(made.formula.text, parts);
  }
  return found;
}

/**
 * Moles of each component in one mole of a species, solid, gas or metal. `I2(aq)` is read as the component `I2`.
 *
 * @throws {RangeError} when no row of the constants makes it.
 */
export function compositionOf(id: string): Components {
  const parts = compositions.get(id) ?? compositions.get(id.replace(/\(aq\)$/, ""));
  if (!parts) throw new RangeError(`no row of log-k makes ${id}, which a half-equation names`);
  return parts;
}
