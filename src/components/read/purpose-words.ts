/** What a test is for: what is seen, and for which ions. */
import { NO_CHANGE } from "#words/observation.ts";
import * as say from "#words/read.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import type { Purpose } from "../../engine/deduction/conclusion.ts";

/** What is seen, and the ions that show it, or salts where the ion alone does not decide it; formulas in mhchem notation. */
export interface Sight {
  seen: string;
  shownBy: string[];
}

/**
 * The different sights of a test, "no visible change" last, and after it what nothing is foretold of. By the kind of ion the test tells apart, an ion standing for its salts where all
 * of them may show the sight; by salts where it tells both kinds apart or neither. Sights that the same ions and salts may show stand together.
 *
 * @param words each reading of the test in words
 */
export function sightsOf(purpose: Purpose, words: readonly string[], table: PredictionTable): Sight[] {
  const [kind, both] = purpose.tellsApart;
  const ofKind = kind && !both ? (`${kind}s` as const) : undefined;
  const all = [...new Set(purpose.groups.flatMap(({ salts }) => salts))];
  const sights = new Map<string, Sight>();
  for (const { reading, salts } of purpose.groups) {
    const shownBy = namesOf(salts, all, ofKind, table);
    const known = sights.get(shownBy.join());
    if (known) known.seen += say.orSeen(words[reading]);
    else sights.set(shownBy.join(), { seen: words[reading], shownBy });
  }
  const nothing = ({ seen }: Sight) => Number(seen.startsWith(NO_CHANGE));
  const told = [...sights.values()].sort((a, b) => nothing(a) - nothing(b));
  const { unpredicted } = purpose;
  if (unpredicted.length === 0) return told;
  return [...told, { seen: say.NOT_FORETOLD, shownBy: namesOf(unpredicted, [...all, ...unpredicted], ofKind, table) }];
}

/** Salts left out by name where nearly all salts of an ion show a sight; with more of them, those that show it are named. */
const EXCEPTED = 2;

/** The salts by formula; one ion of the kind, where one is asked for, in the place of all salts that hold it, or of all but a few. */
function namesOf(
  salts: readonly number[],
  all: readonly number[],
  kind: "cations" | "anions" | undefined,
  { salts: entries }: PredictionTable,
): string[] {
  const holding = (ion: string) => all.filter((salt) => kind && entries[salt][kind].includes(ion));
  const ionName = (ion: string): string | undefined => {
    const without = holding(ion).filter((salt) => !salts.includes(salt));
    if (without.length === 0) return ion;
    const few = without.length <= EXCEPTED && 3 * without.length < holding(ion).length;
    const formulas = () => without.map((salt) => entries[salt].formula);
    return few ? say.except(ion, formulas()) : undefined;
  };
  return [
    ...new Set(
      salts.flatMap((salt) => {
        const names = kind ? entries[salt][kind].flatMap((ion) => ionName(ion) ?? []) : [];
        return names.length > 0 ? names : [entries[salt].formula];
      }),
    ),
  ];
}

/** In a few words: which kind of ion the test tells apart. */
export function purposeWords({ tellsApart, groups }: Purpose): string {
  if (tellsApart.length > 0) return say.tellsApart(tellsApart);
  return groups.length > 1 ? say.TELLS_SALTS : say.TELLS_NOTHING;
}
