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
  /** The components it turns into one another, whatever their form: the same for Fe^3+/Fe^2+ and Fe(OH)3/Fe(OH)2. */
  family: string;
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
  const [oxidised, reduced] = [parts(left), parts(right)];
  return {
    couple,
    electrons,
    family: familyOf(oxidised, reduced),
    oxidised,
    reduced,
    shownOxidised: parts(shown.left),
    shownReduced: parts(shown.right),
  };
}

function familyOf(oxidised: readonly Part[], reduced: readonly Part[]): string {
  const change = new Map<string, number>();
  for (const [side, sign] of [[oxidised, -1] as const, [reduced, 1] as const]) {
    for (const { components, coefficient } of side) {
      for (const [id, moles] of Object.entries(components)) {
        if (id !== "H+" && id !== "H2O") change.set(id, (change.get(id) ?? 0) + sign * moles * coefficient);
      }
    }
  }
  const named = (sign: number) =>
    [...change]
      .flatMap(([id, n]) => (n * sign > 0 ? [id] : []))
      .sort()
      .join(" + ");
  return `${named(-1)} to ${named(1)}`;
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
