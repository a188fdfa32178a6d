/** What a test is for: what is seen, and for which ions. */
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import type { Purpose } from "../../engine/deduction/conclusion.ts";

/** What is seen, and the ions (or salts, where no ion decides by itself) that show it; formulas in mhchem notation. */
export interface Sight {
  seen: string;
  shownBy: string[];
}

/**
 * The different sights of a test, "no visible change" last. By the kind of ion the test tells apart; by salts where it tells both
 * kinds apart or neither. Sights that the same ions may show stand together.
 *
 * @param words each reading of the test in words
 */
export function sightsOf(purpose: Purpose, words: readonly string[], table: PredictionTable): Sight[] {
  const [kind, both] = purpose.tellsApart;
  const sights = new Map<string, Sight>();
  for (const { reading, salts, cations, anions } of purpose.groups) {
    const ions = kind === "cation" ? cations : anions;
    const shownBy = kind && !both ? ions : salts.map((salt) => table.salts[salt].formula);
    const known = sights.get(shownBy.join());
    if (known) known.seen += `, or ${words[reading]}`;
    else sights.set(shownBy.join(), { seen: words[reading], shownBy });
  }
  const nothing = ({ seen }: Sight) => Number(seen.startsWith("no visible change"));
  return [...sights.values()].sort((a, b) => nothing(a) - nothing(b));
}

/** In a few words: which kind of ion the test tells apart. */
export function purposeWords({ tellsApart, groups }: Purpose): string {
  if (tellsApart.length > 0) return `Tells apart which ${tellsApart.join(" and which ")}.`;
  return groups.length > 1 ? "Tells no ion by itself, but some salts." : "Nothing: all allowed salts look the same.";
}
