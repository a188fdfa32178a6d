/** Tube depths and masses against tables and worked examples computed by hand outside this project. */
import { BOILING_TUBES, TEST_TUBES } from "../../src/engine/constants/glassware.ts";
import { molarMass } from "../../src/engine/formula/molar-mass.ts";
import { parseFormula } from "../../src/engine/formula/parse.ts";
import { brimCapacity, depthOfVolume, volumeAtDepth } from "../../src/engine/planning/geometry.ts";
import { type Comparison, comparison } from "./comparison.ts";
import { reasonFor, reference } from "./reference.ts";

interface DepthRow {
  id: string;
  depthMm: Record<string, number>;
  cm3AtMm: Record<string, number>;
  brimCm3: number;
}

/** Depths, volumes and brims of every tube size; a figure agrees when it rounds to the printed one. */
export function compareDepths(): Comparison {
  const result = comparison("tube depths and volumes", "tests/reference/tube-depths.json (hand calculation)");
  const sizes = [...TEST_TUBES, ...BOILING_TUBES];
  for (const row of reference<{ tubes: DepthRow[] }>("tube-depths.json").tubes) {
    const size = sizes.find(({ id }) => id === row.id);
    if (!size) {
      result.left[`no tube ${row.id}`] = 1;
      continue;
    }
    const hold = (what: string, found: number, printed: number, step: number) =>
      count(result, `${row.id} ${what}`, found, printed, step / 2 + 1e-9);
    for (const [cm3, mm] of Object.entries(row.depthMm))
      hold(`depth of ${cm3} cm3`, depthOfVolume(Number(cm3), size), mm, 0.1);
    for (const [mm, cm3] of Object.entries(row.cm3AtMm))
      hold(`volume at ${mm} mm`, volumeAtDepth(Number(mm), size), cm3, 0.01);
    hold("brim", brimCapacity(size), row.brimCm3, 1);
  }
  return result;
}

const M = (formula: string) => molarMass(parseFormula(formula));

/** The worked examples that ask for a mass, each as the arithmetic its question states, with our molar masses. */
const MASSES: Record<string, () => number> = {
  W57: () => 0.05 * 0.25 * M("AgNO3"),
  W58: () => 0.1 * M("CuSO4*5H2O"),
  W59: () => 0.1 * M("BaCl2*2H2O"),
  W60: () => 0.025 * M("Pb(NO3)2"),
  W61: () => 0.05 * M("Al2(SO4)3*16H2O"),
  W68: () => (1.5 * M("H2O2")) / 10,
  W69: () => 0.01 * M("KMnO4"),
  W71: () => 0.025 * M("(NH4)2Fe(SO4)2*6H2O"),
  W77: () => M("CuSO4") / M("CuSO4*5H2O"),
  W78: () => (2 * M("PbO")) / M("Pb(NO3)2"),
  W79: () => (0.2 / M("CaCO3")) * 24000,
  W81: () => (0.4 * M("NaOH")) / 10,
  W82: () => 20 / M("NaOH"),
  W83: () => 3 / M("Pb(NO3)2"),
  W84: () => 30 / M("AgNO3"),
};

/** Masses of the worked examples, within each example's own tolerance. */
export function compareMasses(): Comparison {
  const result = comparison("worked masses and dilutions", "tests/reference/worked-examples.json, W57 to W84");
  const { examples } = reference<{ examples: { id: string; answer: number; tolerance: string }[] }>(
    "worked-examples.json",
  );
  for (const { id, answer, tolerance } of examples) {
    const compute = MASSES[id];
    const relative = /relative (\d+) %/.exec(tolerance);
    if (!compute || !relative) {
      result.left["needs no figure of the engine"] = (result.left["needs no figure of the engine"] ?? 0) + 1;
      continue;
    }
    count(result, id, compute(), answer, (Number(relative[1]) / 100) * answer);
  }
  return result;
}

function count(result: Comparison, id: string, found: number, expected: number, within: number): void {
  result.compared++;
  if (Math.abs(found - expected) <= within) result.agreed++;
  else result.misses.push({ id, difference: `${found} where the reference has ${expected}`, reason: reasonFor(id) });
}
