/** What a heated solid may do that the usual hold of its tube is wrong for: it melts, and a melt runs to a lowered mouth. */
import { melt } from "#words/bench.ts";
import type { PredictionTable } from "../bench/prediction-table.ts";
import type { Caution } from "../constants/bench-cautions.ts";
import { BURNER, MELTING_POINTS } from "../constants/heating.ts";
import { cellsOf } from "../practical/cells.ts";
import type { Part } from "../practical.ts";

/** Salts named before the rest are only counted. */
const NAMED = 3;

/** The salt itself or a hydrate of it melts at so many degrees C or below. */
const meltsAt = (salt: string, celsius: number): boolean =>
  Object.entries(MELTING_POINTS).some(
    ([formula, point]) => (formula === salt || formula.startsWith(`${salt}*`)) && point <= celsius,
  );

/** Salts (formulas) that some sample heated dry may be and that melt at that heat, in the order of the table. */
export function meltingSalts(parts: Part[], table: PredictionTable): string[] {
  const found = new Set<number>();
  cellsOf(parts).forEach(({ test }, index) => {
    const heats = test.steps.flatMap((step) => (step.do === "heat solid" ? [BURNER[step.how].sample] : []));
    if (heats.length === 0) return;
    for (const { label, set } of table.samples) {
      if (!table.cells[index].samples.includes(label)) continue;
      for (const salt of table.sets[set].salts) {
        if (meltsAt(table.salts[salt].formula, Math.max(...heats))) found.add(salt);
      }
    }
  });
  return [...found].sort((a, b) => a - b).map((salt) => table.salts[salt].formula);
}

/** The caution for them, none where nothing melts. Common practice, no source. */
export function meltingCautions(parts: Part[], table: PredictionTable): Pick<Caution, "rank" | "text">[] {
  const salts = meltingSalts(parts, table);
  if (salts.length === 0) return [];
  return [{ rank: 1, text: melt(salts.slice(0, NAMED), Math.max(0, salts.length - NAMED)) }];
}
