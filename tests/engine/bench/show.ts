/** One salt through some tests, as a reader of the tests below would carry them out. */
import { predictSalt } from "../../../src/engine/bench/predict.ts";
import type { Prediction } from "../../../src/engine/bench/prediction.ts";
import { saltOf } from "../../../src/engine/bench/salt.ts";
import { createSolver } from "../../../src/engine/equilibrium/solve.ts";
import { procedure } from "../../../src/engine/practical.ts";

export const solve = createSolver();

export const take = { take: "1 cm3" };
export const drops = (reagent: string) => ({ add: reagent, drops: 5 });
export const cm3 = (reagent: string, volume = 1) => ({ add: reagent, volume: `${volume} cm3` });
export const excess = (reagent: string) => ({ add: reagent, until: "in excess" });
export const warm = { warm: true };
export const boilOf = (minutes: number) => ({ boil: `${minutes} min` });
export const test = (how: string) => ({ testGas: how });

/** What 1 cm3 of a 0.1 mol/dm3 solution shows in tests that follow one another in one tube. */
export function show(ions: Record<string, number>, ...tests: unknown[][]): Prediction[] {
  const parts = procedure.parse([{ label: "a", title: "test", tests: tests.map((steps) => ({ steps })) }]);
  return [...predictSalt({ ions, molPerDm3: 0.1 }, parts, solve).values()];
}

/** The ion in company that shows nothing of its own: nitrate, or sodium. */
export const saltWith = (ion: string): Record<string, number> =>
  ion.endsWith("+") ? saltOf(ion, "NO3-").ions : saltOf("Na+", ion).ions;

export const equationsOf = (shown: readonly Prediction[]): string[] =>
  shown.flatMap(({ events }) => events.flatMap(({ equation }) => equation ?? []));
