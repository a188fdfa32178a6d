/**
 * Enthalpy and entropy of a substance, from its row or by an additivity rule where the row is silent:
 * - water of crystallisation adds a fixed amount each (WATER_OF_CRYSTALLISATION);
 * - the entropies of two salts of the same anion differ like those of the two oxides (else the two chlorides) of their metals
 *   (Latimer's additivity, from memory; good to about 10 J/(mol K) for each cation).
 */
import { SUBSTANCES, type SubstanceRow, WATER_OF_CRYSTALLISATION } from "../../constants/thermochemistry/index.ts";
import { parseFormula } from "../../formula/parse.ts";
import { saltOf } from "../salt.ts";
import { hydrate, makeUpOf } from "./make-up.ts";
import type { Substance } from "./reaction.ts";

export interface Figures {
  /** kJ/mol. */
  dHf?: number;
  /** J/(mol K). */
  S?: number;
  /** Named when a figure comes from a rule instead of a row. */
  estimated?: true;
}

/** The solids with a row, read once. */
export const solidRows = SUBSTANCES.filter(({ state }) => state === "s").map((row) => ({
  row,
  makeUp: makeUpOf(row.formula),
}));

const rows = new Map(SUBSTANCES.map((row) => [`${row.formula}(${row.state})`, row]));

/** The row of a substance, if there is one. */
export const rowOf = ({ formula, state }: Substance): SubstanceRow | undefined => rows.get(`${formula}(${state})`);

/** The figures of a substance at 298.15 K; a figure that neither a row nor a rule gives is absent. */
export function figuresOf(substance: Substance): Figures {
  const row = rowOf(substance);
  if (row?.dHf !== undefined && row.S !== undefined) return { dHf: row.dHf, S: row.S };
  if (substance.state === "g") return {};
  const { water, dry } = makeUpOf(substance.formula);
  const rule = water > 0 ? withWater(dry, water) : {};
  const found: Figures = { estimated: true };
  const dHf = row?.dHf ?? rule.dHf;
  const S = row?.S ?? rule.S ?? likeAnother(substance.formula);
  if (dHf !== undefined) found.dHf = dHf;
  if (S !== undefined) found.S = S;
  return found;
}

function withWater(dry: string, water: number): Figures {
  const { dHf, S } = figuresOf({ formula: dry, state: "s" });
  const { dHf: each, S: entropyEach } = WATER_OF_CRYSTALLISATION;
  return {
    ...(dHf === undefined ? {} : { dHf: dHf + water * each.value }),
    ...(S === undefined ? {} : { S: S + water * entropyEach.value }),
  };
}

/** Entropy from a salt of the same anion, water and charge whose entropy is known. */
function likeAnother(formula: string): number | undefined {
  const { water, dry, cations, anions } = makeUpOf(formula);
  if (cations.length !== 1 || anions.length !== 1) return undefined;
  const [cation] = cations;
  for (const { row, makeUp: other } of solidRows) {
    if (row.S === undefined || other.water !== water || other.cations.length !== 1 || other.anions.length !== 1)
      continue;
    if (other.anions[0] !== anions[0] || other.cations[0] === cation) continue;
    if (hydrate(saltOf(other.cations[0], anions[0]).formula, water) !== row.formula) continue;
    const difference = entropyAbove(cation, other.cations[0]);
    const salt = saltOf(cation, anions[0]);
    if (difference !== undefined && salt.formula === dry) return row.S + salt.ions[cation] * difference;
  }
  return undefined;
}

/** Entropy of one cation above another of the same charge, by their oxides, else by their chlorides. */
function entropyAbove(cation: string, other: string): number | undefined {
  if (parseFormula(cation).charge !== parseFormula(other).charge) return undefined;
  for (const anion of ["O^2-", "Cl-"]) {
    const [one, two] = [saltOf(cation, anion), saltOf(other, anion)];
    const S = rowOf({ formula: one.formula, state: "s" })?.S;
    const otherS = rowOf({ formula: two.formula, state: "s" })?.S;
    if (S !== undefined && otherS !== undefined) return S / one.ions[cation] - otherS / two.ions[other];
  }
  return undefined;
}
