/** The couples of the potential table, read once: what each reduction uses and makes. */
import { type Couple, couples } from "../../constants/potentials.ts";
import { parseEquation, type Term } from "../../formula/equation.ts";
import type { Components } from "../composition.ts";
import { AIR, compositionOf } from "./substances.ts";

/** A substance on one side of a half-equation. */
export interface Part {
  id: string;
  coefficient: number;
  charge: number;
  state: "dissolved" | "solid" | "gas";
  /** Components in one mole; the oxygen of the air and pieces of metal stand for themselves. */
  components: Components;
}

export interface HalfEquation {
  couple: Couple;
  electrons: number;
  /** Oxidised side and reduced side of the half-equation the potential belongs to. */
  oxidised: Part[];
  reduced: Part[];
  /** The same two sides as equations show them. */
  shownOxidised: Part[];
  shownReduced: Part[];
}

/** Every couple, in the order of the table. Throws a RangeError naming a half-equation without electrons on its left. */
export const halfEquations: readonly HalfEquation[] = couples.map(read);

function read(couple: Couple): HalfEquation {
  const { left, right } = parseEquation(couple.half);
  const shown = couple.written === undefined ? { left, right } : parseEquation(couple.written);
  const electrons = left.find(isElectron)?.coefficient;
  if (electrons === undefined) throw new RangeError(`${couple.half}: a reduction has its electrons, e-, on the left`);
  const parts = (terms: readonly Term[]) =>
    terms.filter((term) => !isElectron(term)).map((term) => partOf(term, couple));
  return {
    couple,
    electrons,
    oxidised: parts(left),
    reduced: parts(right),
    shownOxidised: parts(shown.left),
    shownReduced: parts(shown.right),
  };
}

function isElectron({ formula }: Term): boolean {
  return formula.text === "e-";
}

function partOf({ coefficient, formula }: Term, couple: Couple): Part {
  const id = formula.text;
  return {
    id,
    coefficient,
    charge: formula.charge,
    state: formula.state === "s" ? "solid" : formula.state === "g" ? "gas" : "dissolved",
    components: couple.fromAir && id === AIR ? { [AIR]: 1 } : compositionOf(id),
  };
}
