/** Whether a solution can be made up at all at its strength: the engine's own answer, for samples and reagents alike. */

import { ionNames } from "#words/ion-names.ts";
import { cannotBe } from "../../bench/allowed-salts.ts";
import { hasConstants } from "../../bench/composition.ts";
import type { Content } from "../../bench/salt.ts";
import type { Reagent } from "../../constants/reagents.ts";
import type { Solver } from "../../equilibrium/solve.ts";

const isNamed = (ion: string): boolean => Object.hasOwn(ionNames, ion) && hasConstants(ion);
const isCation = (ion: string): boolean => ion.endsWith("+");

/** Half a sentence with the engine's figure, or nothing when the salt dissolves to the strength (mol/dm3). */
export const tooStrong = (content: Content, molPerDm3: number, solve: Solver): string | undefined =>
  cannotBe(content, { given: "solution", concentration: { molPerDm3 } }, solve);

/**
 * The same for a reagent made of ions. Nothing for molecules such as ammonia, which mix with water in any proportion or are limited by
 * their stock, and for those weaker than the usual bottle.
 */
export function reagentTooStrong(reagent: Reagent, molPerDm3: number | null, solve: Solver): string | undefined {
  const ions = Object.keys(reagent.components);
  if (molPerDm3 === null || molPerDm3 <= (reagent.concentration ?? 0) || !ions.every(isNamed)) return undefined;
  return tooStrong(
    {
      formula: reagent.formula ?? reagent.id,
      cations: ions.filter(isCation),
      anions: ions.filter((ion) => !isCation(ion)),
      ions: { ...reagent.components },
    },
    molPerDm3,
    solve,
  );
}
