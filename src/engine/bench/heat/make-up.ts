/** What a solid is made of, for the question what heat does to it: its ions and its water of crystallisation. */
import { ANIONS, CATIONS } from "../../constants/ions.ts";
import { salts } from "../../constants/salts.ts";
import { parseFormula } from "../../formula/parse.ts";
import { saltOf } from "../salt.ts";

export interface MakeUp {
  /** Molecules of water of crystallisation in one formula unit. */
  water: number;
  /** The formula without that water. */
  dry: string;
  cations: readonly string[];
  anions: readonly string[];
}

const HEATED_CATIONS: readonly string[] = [...CATIONS, "Li+", "Co^2+", "Ni^2+", "Cu+"];
const HEATED_ANIONS: readonly string[] = [
  ...ANIONS,
  "OH-",
  "O^2-",
  "NO2-",
  "HCO3-",
  "HSO4-",
  "S2O3^2-",
  "CrO4^2-",
  "Cr2O7^2-",
  "MnO4-",
];
const WATER = /[*.](\d+(?:\.\d+)?)?H2O$/;

/**
 * Reads a solid. A formula that is no salt of the ions known here (an element, an oxide such as Pb3O4) has no ions.
 *
 * @throws {FormulaError} for a formula that cannot be read.
 * @example makeUpOf("CuSO4*5H2O") // { water: 5, dry: "CuSO4", cations: ["Cu^2+"], anions: ["SO4^2-"] }
 */
export function makeUpOf(formula: string): MakeUp {
  parseFormula(formula);
  const match = WATER.exec(formula);
  const dry = match === null ? formula : formula.slice(0, match.index);
  const water = match === null ? 0 : Number(match[1] ?? 1);
  return { water, dry, ...ionsOf(dry) };
}

/** The formula of `dry` with that much water: `hydrate("CuSO4", 1)` is "CuSO4*H2O". */
export const hydrate = (dry: string, water: number): string =>
  water === 0 ? dry : `${dry}*${water === 1 ? "" : water}H2O`;

type Ions = Pick<MakeUp, "cations" | "anions">;

const atomsOf = (formula: string): string =>
  Object.entries(parseFormula(formula).elements)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([element, count]) => element + count)
    .join(" ");

/** Salts of one cation and one anion by their atoms; of two salts of the same atoms, the first in the order of the ions. */
const simpleSalts = new Map<string, Ions>(
  HEATED_CATIONS.flatMap((cation) =>
    HEATED_ANIONS.map((anion): [string, Ions] => [
      atomsOf(saltOf(cation, anion).formula),
      { cations: [cation], anions: [anion] },
    ]),
  ).reverse(),
);

/** Double and basic salts of the store, which their atoms alone do not part into ions. */
const storedSalts = new Map<string, Ions>(
  salts.map(({ formula, cations, anions }) => [formula.replace(WATER, ""), { cations, anions }]),
);

function ionsOf(dry: string): Ions {
  const found = storedSalts.get(dry) ?? simpleSalts.get(atomsOf(dry));
  if (found) return found;
  const basicChloride = /^([A-Z][a-z]?)\(OH\)Cl$/.exec(dry);
  return basicChloride === null
    ? { cations: [], anions: [] }
    : { cations: [`${basicChloride[1]}^2+`], anions: ["OH-", "Cl-"] };
}
