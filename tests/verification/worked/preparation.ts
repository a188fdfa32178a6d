/**
 * The worked calculations on preparing solutions, bench volumes and limits (W57 to W85): each is the arithmetic its question states, with
 * the engine's molar masses, tube geometry and bench practice where the example has its own figures.
 */
import { molarMass } from "../../../src/engine/formula/molar-mass.ts";
import { bandStart } from "../../../src/engine/planning/class/hazard-at.ts";
import { measured, stockOf } from "../../../src/engine/planning/class/recipe.ts";
import { bottleNamed, weighed } from "../../../src/engine/planning/class/store-bottles.ts";
import { depthOfVolume, volumeAtDepth } from "../../../src/engine/planning/geometry.ts";
import { alkaliForAluminium, volumeOfDrops, withSpare } from "../../../src/engine/planning/portions.ts";
import { type Comparison, comparison } from "../comparison.ts";
import { equilibriumExamples } from "./equilibria.ts";
import { given, holdAgainst, leaveOut, workedExamples } from "./example.ts";
import type { Questions } from "./textbook.ts";

const M = molarMass;

/** mol/dm3 of a solution of which a part by mass is the solute. */
const strength = (part: number, gPerCm3: number, formula: string) => (part * gPerCm3 * 1000) / M(formula);
/** Weighed out as the preparation sheet does it, for so many cm3 of solution. */
const grams = (formula: string, molPerDm3: number, cm3: number) =>
  (weighed(bottleNamed(formula), molPerDm3).perDm3 * cm3) / 1000;
/** The tube of W73 and W74. */
const TUBE = { outsideMm: 16, wallMm: 1 };

const QUESTIONS: Questions = {
  W57: () => grams("AgNO3", 0.05, 250),
  W58: () => grams("CuSO4*5H2O", 0.2, 500),
  W59: () => grams("BaCl2*2H2O", 0.1, 1000),
  W60: () => grams("Pb(NO3)2", 0.1, 250),
  W61: () => grams("Al2(SO4)3*16H2O", 0.05, 1000),
  W62: () => 2 * measured(stockOf("880 ammonia"), 1).perDm3,
  W63: () => measured(stockOf("25 % ammonia"), 2).perDm3,
  W64: () => strength(given("W64", "w"), given("W64", "rho"), "NH3"),
  W65: () => strength(0.36, 1.18, "HCl"),
  W66: () => 1000 / strength(0.98, 1.84, "H2SO4"),
  W68: () => (1.5 * M("H2O2")) / 10,
  W69: () => grams("KMnO4", 0.02, 500),
  // A stock of 1 mol/dm3 holds one mole in 1000 cm3; half a dm3 is made.
  W70: () => measured({ ...stockOf("concentrated nitric acid"), cm3PerMol: 1000 }, 0.4).perDm3 / 2,
  W71: () => grams("(NH4)2Fe(SO4)2*6H2O", 0.1, 250),
  W72: () => volumeOfDrops(20),
  W73: () => depthOfVolume(1, TUBE),
  W74: () => volumeAtDepth(10, TUBE),
  W75: () => alkaliForAluminium(1, 0.1, 1),
  W76: () => withSpare(24 * 6 * volumeOfDrops(5), 0.3),
  W77: () => M("CuSO4") / M("CuSO4*5H2O"),
  W78: () => (2 * M("PbO")) / M("Pb(NO3)2"),
  W79: () => (0.2 / M("CaCO3")) * 24000,
  W81: () => (0.4 * M("NaOH")) / 10,
  W82: () => bandStart("NaOH", { from: { percent: 2 } }),
  W83: () => bandStart("Pb(NO3)2", { from: { percent: 0.3 } }),
  W84: () => bandStart("AgNO3", { from: { percent: 3 } }),
  // 100 mg/kg for the salt, of which 0.10 mol/dm3 are so many g in 1000 g.
  W85: () => 100 / ((0.1 * M("BaCl2")) / 1000),
};

/** Every example that asks for no equilibrium. */
export function compareWorkedPreparation(): Comparison {
  const result = comparison("worked masses, volumes and limits", "tests/reference/worked-examples.json, W57 to W85");
  for (const example of workedExamples.filter((one) => !equilibriumExamples.includes(one))) {
    const ask = QUESTIONS[example.id];
    if (ask) holdAgainst(result, example, ask());
    // W67, W80: gas volumes by 22.4 and 24 dm3/mol.
    else leaveOut(result, "needs no figure of the engine");
  }
  return result;
}
