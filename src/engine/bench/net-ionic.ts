/**
 * The net ionic equation of an event, found from what the mixture holds before and after: the solid (or gas) is made from, or goes
 * into, the forms that really shrink and grow. It balances by construction: every term is taken from what the other terms leave over,
 * component by component, then protons (as OH-, NH3/NH4+ or H+, whichever the mixture used), then water.
 */
import { compileDatabase, type Species } from "../equilibrium/species.ts";
import type { Amounts } from "./amounts.ts";

const database = compileDatabase();
const everything = new Map<string, Species>(
  [...database.species, ...database.phases].map((entry) => [entry.id, entry]),
);
const PROTON = database.componentIndex.get("H+") as number;
const AMMONIA = database.componentIndex.get("NH3") as number;

/** Species a net ionic equation may name as the form of a component: free ions, their hydroxo, ammine and protonated forms, no ion pairs. */
const carriers = new Map<number, string[]>();
for (const entry of everything.values()) {
  // Hydrogensulfate counts as sulfate: school equations are written so, and in dilute acid the two are there together.
  if (entry.id === "HSO4-") continue;
  const own = entry.nu.filter(([index, moles]) => index !== PROTON && index !== AMMONIA && moles > 0);
  if (own.length === 1 && !("kind" in entry && entry.kind === "gas")) {
    const list = carriers.get(own[0][0]) ?? [];
    list.push(entry.id);
    carriers.set(own[0][0], list);
  }
  if ("kind" in entry && entry.kind === "solid" && own.length > 1) {
    for (const [index] of own) carriers.set(index, [...(carriers.get(index) ?? []), entry.id]);
  }
}

/** What has still to be supplied by reactants (positive) or taken up by products (negative). */
interface Need {
  components: Map<number, number>;
  water: number;
}

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
  const grown = (name: string) => (after.get(name) ?? 0) - (before.get(name) ?? 0);

  const product = (entry: Species, count: number) => put(right, need, entry, count, 1);
  const reactant = (entry: Species, count: number) => put(left, need, entry, count, -1);
  if (forms) product(target, 1);
  else reactant(target, 1);

  for (let round = 0; round < 12; round++) {
    const open = [...need.components].find(
      ([index, amount]) => index !== PROTON && index !== AMMONIA && Math.abs(amount) > 1e-9,
    );
    if (!open) break;
    const [index, amount] = open;
    const wanted = amount > 0;
    const best = mostChanged(index, (name) =>
      name === id ? Number.NEGATIVE_INFINITY : (wanted ? -1 : 1) * grown(name) * molesOf(name, index),
    );
    const entry = everything.get(best ?? database.components[index].id) as Species;
    const count = Math.abs(amount) / (entry.nu.find(([which]) => which === index)?.[1] ?? 1);
    if (wanted) reactant(entry, count);
    else product(entry, count);
  }

  const NH3 = everything.get("NH3") as Species;
  const NH4 = everything.get("NH4+") as Species;
  const ammonia = need.components.get(AMMONIA) ?? 0;
  if (ammonia > 1e-9) reactant(grown("NH4+") < grown("NH3") ? NH4 : NH3, ammonia);
  else if (ammonia < -1e-9) product(grown("NH4+") > grown("NH3") ? NH4 : NH3, -ammonia);

  const protons = need.components.get(PROTON) ?? 0;
  const H = everything.get("H+") as Species;
  const OH = everything.get("OH-") as Species;
  if (protons < -1e-9) {
    const way = mostUsed({ OH: -grown("OH-"), NH3: grown("NH4+"), H: grown("H+") }) ?? "H";
    if (way === "OH") reactant(OH, -protons);
    else if (way === "H") product(H, -protons);
    else {
      reactant(NH3, -protons);
      product(NH4, -protons);
    }
  } else if (protons > 1e-9) {
    const rest = (after.get("NH4+") ?? 0) > NOTICED ? "NH4" : "OH";
    const way = mostUsed({ H: -grown("H+"), NH4: -grown("NH4+"), OH: grown("OH-") }) ?? rest;
    if (way === "H") reactant(H, protons);
    else if (way === "OH") product(OH, protons);
    else {
      reactant(NH4, protons);
      product(NH3, protons);
    }
  }
  if (need.water > 1e-9) left.set("H2O", need.water);
  else if (need.water < -1e-9) right.set("H2O", -need.water);
  return write(left, right);
}

/** A change below this, mol, decides nothing: it is what a few drops of a neutral solution hold of H+ or OH-. */
const NOTICED = 1e-7;

/** The largest of some changes, if it is worth noticing. */
function mostUsed<Way extends string>(changes: Record<Way, number>): Way | undefined {
  const [way, amount] = (Object.entries(changes) as [Way, number][]).reduce((a, b) => (b[1] > a[1] ? b : a));
  return amount > NOTICED ? way : undefined;
}

function put(side: Map<string, number>, need: Need, entry: Species, count: number, sign: number): void {
  side.set(entry.id, (side.get(entry.id) ?? 0) + count);
  for (const [index, moles] of entry.nu) {
    need.components.set(index, (need.components.get(index) ?? 0) + sign * moles * count);
  }
  need.water += sign * entry.water * count;
}

function molesOf(name: string, index: number): number {
  return everything.get(name)?.nu.find(([which]) => which === index)?.[1] ?? 0;
}

function mostChanged(index: number, change: (name: string) => number): string | undefined {
  let best: string | undefined;
  let most = 0;
  for (const name of carriers.get(index) ?? []) {
    const amount = change(name);
    if (amount > most) {
      most = amount;
      best = name;
    }
  }
  return best;
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
export function withState(id: string): string {
  if (id === "H2O") return "H2O(l)";
  const plain = id.replace(/\((s|g|aq|l)(?:, [^)]*)?\)$/, "($1)");
  return /\((s|g|aq|l)\)$/.test(plain) ? plain : `${plain}(aq)`;
}
