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
/** Gases that bring a component, where they are led into the mixture: among what was brought together, they can be reactants. */
const gasesLedIn = new Map<number, string[]>();
for (const entry of everything.values()) {
  // Hydrogensulfate counts as sulfate: school equations are written so, and in dilute acid the two are there together.
  if (entry.id === "HSO4-") continue;
  const own = entry.nu.filter(([index, moles]) => index !== PROTON && index !== AMMONIA && moles > 0);
  if (own.length === 1) {
    const of = "kind" in entry && entry.kind === "gas" ? gasesLedIn : carriers;
    of.set(own[0][0], [...(of.get(own[0][0]) ?? []), entry.id]);
  }
  if ("kind" in entry && entry.kind === "solid" && own.length > 1) {
    for (const [index] of own) carriers.set(index, [...(carriers.get(index) ?? []), entry.id]);
  }
}

/** Complexes of halides that can hold a component in solution where its solid would be: silver, lead and copper(I) halides, triiodide. */
const halideComplexes = new Map<number, string[]>();
const HALIDES = ["Cl-", "Br-", "I-"].map((id) => database.componentIndex.get(id) as number);
for (const { id, nu } of database.species) {
  const centres = nu.filter(([index]) => !HALIDES.includes(index));
  if (centres.length !== 1 || nu.length === 1 || !(id.startsWith("[") || id === "I3-")) continue;
  const [[centre]] = centres;
  halideComplexes.set(centre, [...(halideComplexes.get(centre) ?? []), id]);
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
    const more = wanted ? gasesLedIn : forms ? undefined : halideComplexes;
    const best = mostChanged([...(carriers.get(index) ?? []), ...(more?.get(index) ?? [])], (name) =>
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
  if (Math.abs(protons) > 1e-9) {
    const least = Math.max(NOTICED, NOTICED_PART * Math.abs(grown(id)));
    const pairs = protons < 0 ? TAKE_PROTON : GIVE_PROTON;
    const ligand = left.has("NH3") && protons > 0;
    const [used] = ligand
      ? [pairs.find(({ product: name }) => name === "OH-") as ProtonPair]
      : [...pairs].sort((one, other) => other.change(grown) - one.change(grown));
    const rest = pairs.find(({ whenNothing }) => whenNothing(after)) as ProtonPair;
    const pair = ligand || used.change(grown) > least ? used : rest;
    if (pair.reactant) reactant(everything.get(pair.reactant) as Species, Math.abs(protons));
    if (pair.product) product(everything.get(pair.product) as Species, Math.abs(protons));
  }
  if (need.water > 1e-9) left.set("H2O", need.water);
  else if (need.water < -1e-9) right.set("H2O", -need.water);
  return write(left, right);
}

/** A change below this, mol, decides nothing: it is what a few drops of a neutral solution hold of H+ or OH-. */
const NOTICED = 1e-7;
/** Nor does one that is a small part of the event itself. */
const NOTICED_PART = 0.02;

/** A way for a mixture to take up or set free a proton; `change` is how much of it the mixture really used. */
interface ProtonPair {
  reactant?: string;
  product?: string;
  change: (grown: (name: string) => number) => number;
  /** The way to take when the mixture shows none plainly. */
  whenNothing: (after: Amounts) => boolean;
}
const holds = (after: Amounts, name: string) => (after.get(name) ?? 0) > NOTICED;

/** Ways to take up a proton the solid or gas sets free. */
const TAKE_PROTON: readonly ProtonPair[] = [
  { reactant: "OH-", change: (grown) => -grown("OH-"), whenNothing: (after) => holds(after, "OH-") },
  { reactant: "NH3", product: "NH4+", change: (grown) => grown("NH4+"), whenNothing: (after) => holds(after, "NH3") },
  {
    reactant: "CO3^2-",
    product: "HCO3-",
    change: (grown) => grown("HCO3-"),
    whenNothing: (after) => holds(after, "HCO3-"),
  },
  { product: "H+", change: (grown) => grown("H+"), whenNothing: () => true },
];
/** Ways to supply a proton. In ammonia solution textbooks let the ligand reaction leave hydroxide behind. */
const GIVE_PROTON: readonly ProtonPair[] = [
  // Before all others: a gas led in is what makes the mixture acidic.
  { reactant: "CO2(g)", product: "HCO3-", change: (grown) => -grown("CO2(g)"), whenNothing: () => false },
  { reactant: "SO2(g)", product: "HSO3-", change: (grown) => -grown("SO2(g)"), whenNothing: () => false },
  { reactant: "H+", change: (grown) => -grown("H+"), whenNothing: (after) => holds(after, "H+") },
  { reactant: "NH4+", product: "NH3", change: (grown) => -grown("NH4+"), whenNothing: (after) => holds(after, "NH4+") },
  {
    reactant: "HCO3-",
    product: "CO3^2-",
    change: (grown) => -grown("HCO3-"),
    whenNothing: (after) => holds(after, "HCO3-"),
  },
  { product: "OH-", change: (grown) => grown("OH-"), whenNothing: () => true },
];

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

function mostChanged(names: readonly string[], change: (name: string) => number): string | undefined {
  let best: string | undefined;
  let most = 0;
  for (const name of names) {
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
function withState(id: string): string {
  if (id === "H2O") return "H2O(l)";
  const plain = id.replace(/\((s|g|aq|l)(?:, [^)]*)?\)$/, "($1)");
  return /\((s|g|aq|l)\)$/.test(plain) ? plain : `${plain}(aq)`;
}
