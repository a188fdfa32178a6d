/** Tube depths and volumes against tables computed by hand outside this project. */
import { BOILING_TUBES, TEST_TUBES } from "../../src/engine/constants/glassware.ts";
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

function count(result: Comparison, id: string, found: number, expected: number, within: number): void {
  result.compared++;
  if (Math.abs(found - expected) <= within) result.agreed++;
  else result.misses.push({ id, difference: `${found} where the reference has ${expected}`, reason: reasonFor(id) });
}
