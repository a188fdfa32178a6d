/** Everything a sample may hold by what the paper says: one salt, or several ions of a kind as a double salt or a mixture. */
import { salts as store } from "../constants/salts.ts";
import type { Sample, Statement } from "../practical.ts";
import { type Content, ionsOf, saltOf, withoutWater } from "./salt.ts";

/** How many ions of each kind a sample holds. */
export type Holds = NonNullable<Sample["holds"]>;

const ONE_OF_EACH: Holds = { cations: 1, anions: 1 };

/** All ways of taking so many, in the order of the list. */
function choose(from: readonly string[], count: number): string[][] {
  if (count === 0) return [[]];
  return from.flatMap((first, at) => choose(from.slice(at + 1), count - 1).map((rest) => [first, ...rest]));
}

/** Everything with so many of the paper's ions, in the paper's order. */
export function contentsOf(paper: Statement, { cations, anions }: Holds = ONE_OF_EACH): Content[] {
  return choose(paper.cations, cations).flatMap((some) =>
    choose(paper.anions, anions).map((others) => contentOf(some, others)),
  );
}

/**
 * What holds just these ions: their salt; the double salt of the school store; else a mixture of as few salts as hold them all, one formula
 * unit of each. In solution it does not matter which ion came with which.
 */
export function contentOf(cations: readonly string[], anions: readonly string[]): Content {
  if (cations.length === 1 && anions.length === 1) return saltOf(cations[0], anions[0]);
  const double = store.find((row) => sameIons(row.cations, cations) && sameIons(row.anions, anions));
  if (double)
    return {
      formula: withoutWater(double.formula),
      cations: [...cations],
      anions: [...anions],
      ions: { ...double.ions },
    };
  const salts = Array.from({ length: Math.max(cations.length, anions.length) }, (_, n) =>
    saltOf(cations[Math.min(n, cations.length - 1)], anions[Math.min(n, anions.length - 1)]),
  );
  const ions: Record<string, number> = {};
  for (const salt of salts) for (const [ion, count] of Object.entries(salt.ions)) ions[ion] = (ions[ion] ?? 0) + count;
  return { formula: salts.map(({ formula }) => formula).join(" + "), cations: [...cations], anions: [...anions], ions };
}

/**
 * What an author's words for a sample name: "CuSO4*5H2O", a double or basic salt of the store, or salts joined by " + ". Undefined when one of them is
 * no salt the engine knows. The order of the ions is that of the words.
 */
export function contentNamed(words: string): Content | undefined {
  const double = store.find(
    ({ formula, cations, anions }) =>
      cations.length + anions.length > 2 && withoutWater(formula) === withoutWater(words),
  );
  if (double?.standsFor) return ionsOf(double.standsFor);
  if (double) return contentOf(double.cations, double.anions);
  const salts = words.split(" + ").map((one) => ionsOf(one.trim()));
  if (salts.some((salt) => salt === undefined)) return undefined;
  const known = salts as Content[];
  const different = (kind: "cations" | "anions") => [...new Set(known.flatMap((salt) => salt[kind]))];
  return contentOf(different("cations"), different("anions"));
}

/** The same ions, in any order. */
export const sameIons = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((ion) => b.includes(ion));
