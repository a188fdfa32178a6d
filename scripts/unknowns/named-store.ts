/** The salts a teacher names, among those a paper allows. */
import { contentNamed, sameIons } from "../../src/engine/bench/contents.ts";
import type { PredictionTable } from "../../src/engine/bench/prediction-table.ts";

export interface NamedStore {
  /** Indices into the table's salts. */
  salts: number[];
  /** What the teacher has but this paper cannot use, each with the reason, in sentences. */
  leftOut: string[];
  /** What is no salt the engine knows, in sentences. */
  faults: string[];
}

export function namedStore(table: PredictionTable, formulas: readonly string[]): NamedStore {
  const found: NamedStore = { salts: [], leftOut: [], faults: [] };
  const offered = [...table.paper.cations, ...table.paper.anions];
  for (const formula of formulas) {
    const content = read(formula);
    if (!content) {
      found.faults.push(
        `--store: found ${formula}, expected a salt of ions the engine knows, written like CuSO4, Fe2(SO4)3 or NaCl + KNO3.`,
      );
      continue;
    }
    const missing = [...content.cations, ...content.anions].filter((ion) => !offered.includes(ion));
    const salt = table.salts.findIndex(
      ({ cations, anions }) => sameIons(cations, content.cations) && sameIons(anions, content.anions),
    );
    const cannotBe = table.sets.flatMap((set) => set.cannotBe.filter((one) => one.salt === salt));
    if (missing.length > 0) found.leftOut.push(`${formula}: the paper does not offer ${missing.join(" or ")}.`);
    else if (salt < 0) found.leftOut.push(`${formula}: no sample of this paper holds so many ions.`);
    else if (!table.sets.some((set) => set.salts.includes(salt)))
      found.leftOut.push(`${formula}: ${cannotBe[0]?.reason ?? "it cannot be such a sample"}.`);
    else if (!found.salts.includes(salt)) found.salts.push(salt);
  }
  return found;
}

/** Undefined for what is no formula at all, too. */
function read(formula: string): ReturnType<typeof contentNamed> {
  try {
    return contentNamed(formula);
  } catch {
    return undefined;
  }
}
