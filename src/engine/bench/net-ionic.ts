/**
 * The net ionic equation of an event, found from what the mixture holds before and after: the solid (or gas) is made from, or goes
 * into, the forms that really shrink and grow. It balances by construction: every term is taken from what the other terms leave over,
 * component by component, then protons, then water.
 */
import type { Species } from "../equilibrium/species.ts";
import type { Amounts } from "./amounts.ts";
import { AMMONIA, everything, formOf, PROTON, TRIIODIDE } from "./net-ionic/forms.ts";
import { type ProtonWay, protonWay } from "./net-ionic/proton-ways.ts";
import { totalOf } from "./total-of.ts";

/** Writes the equation of an event, as `netIonicEquation` does; undefined where there is none, or where nobody reads it. */
export type EquationWriter = (id: string, forms: boolean, before: Amounts, after: Amounts) => string | undefined;

/** What has still to be supplied by reactants (positive) or taken up by products (negative). */
interface Need {
  components: Map<number, number>;
  water: number;
}

/** An equation of many forms is one of few: after so many the rest balances or never will. */
const MOST_FORMS = 12;
/** Moles below which a need is met. */
const MET = 1e-9;

/**
 * Writes the equation in which one formula unit of `id` forms (`forms: true`) or is used up.
 * @param before everything that was brought together, each part as it was, mol
 * @param after the mixture, mol
 * @returns mhchem text with state symbols, or undefined when `id` is unknown
 */
export function netIonicEquation(id: string, forms: boolean, before: Amounts, after: Amounts): string | undefined {
  const target = everything.get(id);
  if (!target) return undefined;
  const left = new Map<string, number>();
  const right = new Map<string, number>();
  const need: Need = { components: new Map(), water: 0 };
  const product = (entry: Species, count: number) => put(right, need, entry, count, 1);
  const reactant = (entry: Species, count: number) => put(left, need, entry, count, -1);
  if (forms) product(target, 1);
  else reactant(target, 1);

  for (let round = 0; round < MOST_FORMS; round++) {
    const open = [...need.components].find(
      ([index, amount]) => index !== PROTON && index !== AMMONIA && Math.abs(amount) > MET,
    );
    if (!open) break;
    const [index, amount] = open;
    const entry = formOf(index, amount > 0, { before, after, not: forms ? [id, TRIIODIDE] : [id] });
    const count = Math.abs(amount) / (entry.nu.find(([which]) => which === index)?.[1] ?? 1);
    if (amount > 0) reactant(entry, count);
    else product(entry, count);
  }

  const grown = (name: string) => (after.get(name) ?? 0) - (before.get(name) ?? 0);
  const NH3 = everything.get("NH3") as Species;
  const NH4 = everything.get("NH4+") as Species;
  const ammonia = need.components.get(AMMONIA) ?? 0;
  if (ammonia > MET) reactant(grown("NH4+") < grown("NH3") ? NH4 : NH3, ammonia);
  else if (ammonia < -MET) product(grown("NH4+") > grown("NH3") ? NH4 : NH3, -ammonia);

  const protons = need.components.get(PROTON) ?? 0;
  if (Math.abs(protons) > MET) {
    const event = id.endsWith("(g)") ? lost(target, before, after) : Math.abs(grown(id));
    const way =
      left.has("NH3") && protons > 0 ? LEAVES_HYDROXIDE : protonWay(protons < 0, { before, after, event, not: id });
    if (way.reactant) reactant(way.reactant.of, way.reactant.count * Math.abs(protons));
    if (way.product) product(way.product.of, way.product.count * Math.abs(protons));
  }
  if (need.water > MET) left.set("H2O", need.water);
  else if (need.water < -MET) right.set("H2O", -need.water);
  return write(left, right);
}

/** Gas that has left is known from what is missing, mol. */
function lost({ nu }: Species, before: Amounts, after: Amounts): number {
  const [index, moles] = nu.find(([which]) => which !== PROTON) ?? [PROTON, 1];
  return Math.max(0, totalOf(index, before) - totalOf(index, after)) / moles;
}

/** In ammonia solution textbooks let the ligand reaction leave hydroxide behind. */
const LEAVES_HYDROXIDE: ProtonWay = { product: { of: everything.get("OH-") as Species, count: 1 } };

function put(side: Map<string, number>, need: Need, entry: Species, count: number, sign: number): void {
  side.set(entry.id, (side.get(entry.id) ?? 0) + count);
  for (const [index, moles] of entry.nu) {
    need.components.set(index, (need.components.get(index) ?? 0) + sign * moles * count);
  }
  need.water += sign * entry.water * count;
}

/** Whole-number coefficients, state symbols, mhchem arrow. A species on both sides is taken off the smaller. */
function write(left: Map<string, number>, right: Map<string, number>): string {
  for (const [name, count] of left) {
    const other = right.get(name);
    if (other === undefined) continue;
    const both = Math.min(count, other);
    left.set(name, count - both);
    right.set(name, other - both);
  }
  const counts = [...left.values(), ...right.values()].filter((count) => count > 1e-9);
  const scale =
    [1, 2, 3, 4, 5, 6, 8, 12].find((n) =>
      counts.every((count) => Math.abs(count * n - Math.round(count * n)) < 1e-6),
    ) ?? 1;
  const side = (terms: Map<string, number>) =>
    [...terms]
      .filter(([, count]) => count > 1e-9)
      .map(([name, count]) => {
        const whole = Math.round(count * scale);
        return `${whole === 1 ? "" : `${whole} `}${withState(name)}`;
      })
      .join(" + ");
  return `${side(left)} -> ${side(right)}`;
}

/** The species as an equation shows it: forms of solids left out, `(aq)` added to what is dissolved. */
function withState(id: string): string {
  if (id === "H2O") return "H2O(l)";
  const plain = id.replace(/\((s|g|aq|l)(?:, [^)]*)?\)$/, "($1)");
  return /\((s|g|aq|l)\)$/.test(plain) ? plain : `${plain}(aq)`;
}
