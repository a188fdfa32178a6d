/** What is said of mixtures that were passed over, held against solving them. */
import { expect, test } from "vitest";
import { componentsOf } from "../../../src/engine/bench/composition.ts";
import { reagentComponents } from "../../../src/engine/bench/operations.ts";
import { saltOf } from "../../../src/engine/bench/salt.ts";
import { CATIONS } from "../../../src/engine/constants/ions.ts";
import { nothingForms } from "../../../src/engine/equilibrium/between.ts";
import { createSolver, type EquilibriumResult } from "../../../src/engine/equilibrium/solve.ts";

const solve = createSolver();
/** Parts of a cubic decimetre of reagent to one of sample. */
const BETWEEN = [0.1, 0.2, 0.4, 0.6, 0.8];

/** One cubic decimetre of a 0.1 mol/dm3 nitrate with so much of a reagent. */
function mixed(cation: string, reagent: string, dm3: number): EquilibriumResult {
  const totals: Record<string, number> = {};
  const count = (components: Readonly<Record<string, number>>, times: number) => {
    for (const [id, mol] of Object.entries(components)) totals[id] = (totals[id] ?? 0) + mol * times;
  };
  count(componentsOf(saltOf(cation, "NO3-").ions), 0.1);
  count(reagentComponents(reagent), dm3);
  const result = solve({ totals, waterKg: 1 + dm3 });
  if (!result.converged) throw new Error(result.reason);
  return result;
}

test.each(["NaOH(aq)", "NH3(aq)", "HCl(aq)", "H2SO4(aq)", "KI(aq)", "Ca(OH)2(aq)"])(
  "with %s nothing forms on the way where nothing is said to",
  (reagent) => {
    let said = 0;
    for (const cation of CATIONS) {
      const [first, last] = [0.05, 1].map((dm3) => mixed(cation, reagent, dm3));
      if (!nothingForms(first, last, {}, 0)) continue;
      said++;
      for (const dm3 of BETWEEN) {
        expect([...mixed(cation, reagent, dm3).phases.keys()], `${cation}, ${dm3} dm3`).toEqual([
          ...first.phases.keys(),
        ]);
      }
    }
    expect(said).toBeGreaterThan(0);
  },
);

test("nothing is said of other components, of a phase that one of them lacks, nor of what an activity in between could bring down", () => {
  expect(nothingForms(mixed("Zn^2+", "NaOH(aq)", 1), mixed("Zn^2+", "NH3(aq)", 1), {}, 0)).toBe(false);
  expect(nothingForms(mixed("Ag+", "HCl(aq)", 0), mixed("Ag+", "HCl(aq)", 1), {}, 0)).toBe(false);
  // No solid at either end: zinc hydroxide comes between them and goes again.
  const [acid, alkali] = [0, 1].map((dm3) => mixed("Zn^2+", "NaOH(aq)", dm3));
  expect([acid.phases.size, alkali.phases.size]).toEqual([0, 0]);
  expect(nothingForms(acid, alkali, {}, 0)).toBe(false);
});
