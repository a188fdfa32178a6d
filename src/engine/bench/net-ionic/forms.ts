/**
 * The forms of a component that a net ionic equation may name: free ions, what they are with hydroxide, ammonia and protons, complexes with
 * the ligands of the bench, solids, and gases led in. Ion pairs are none, nor what water makes of a metal ion by itself.
 */
import { compileDatabase, type Phase, type Species } from "../../equilibrium/species.ts";
import type { Amounts } from "../amounts.ts";
import { totalOf } from "../total-of.ts";

export const database = compileDatabase();
export const everything: ReadonlyMap<string, Species> = new Map(
  [...database.species, ...database.phases].map((entry) => [entry.id, entry]),
);
const indexOf = (id: string): number => database.componentIndex.get(id) as number;
export const PROTON = indexOf("H+");
export const AMMONIA = indexOf("NH3");

/** What binds a metal in a complex an equation shows; sulfate, nitrate and hexacyanoferrate only pair with it. */
const LIGANDS = ["Cl-", "Br-", "I-", "S2O3^2-", "SO3^2-", "SCN-", "NO2-", "CO3^2-"].map(indexOf);
/** Iodine stands in its own complex as a metal does, but only where it dissolves: else it is simply iodine. */
export const TRIIODIDE = "I3-";
/** Counts as sulfate: school equations are written so, and in dilute acid the two are there together. */
const HYDROGENSULFATE = "HSO4-";

/** Davies overrates what is charged more than this, so that a third thiosulfate on silver would seem the rule; textbooks stop at two. */
const MOST_CHARGE = 3;

/** What may be named of each component, with moles of it in one mole. */
const forms = new Map<number, { one: Species; moles: number; dissolved: boolean }[]>();

const kindOf = (entry: Species): Phase["kind"] | "dissolved" => ("kind" in entry ? (entry as Phase).kind : "dissolved");
const molesOf = ({ nu }: Species, index: number): number => nu.find(([which]) => which === index)?.[1] ?? 0;
const isCation = (index: number): boolean => database.components[index].charge > 0;

function add(index: number, one: Species): void {
  const known = forms.get(index) ?? [];
  forms.set(index, known);
  known.push({ one, moles: molesOf(one, index), dissolved: kindOf(one) === "dissolved" });
}

for (const entry of everything.values()) {
  const own = entry.nu.filter(([index, moles]) => index !== PROTON && index !== AMMONIA && moles > 0);
  const [[only] = []] = own;
  if (kindOf(entry) === "solid") for (const [index] of own) add(index, entry);
  else if (own.length === 1 && only !== undefined && mayBeNamed(entry, only)) add(only, entry);
  else if (isComplex(entry)) {
    const [centre] = own.find(([index]) => !LIGANDS.includes(index)) ?? [];
    if (centre !== undefined) add(centre, entry);
  }
}

/** Of forms with nothing else in them but hydroxide, ammonia and protons. */
function mayBeNamed(entry: Species, index: number): boolean {
  if (entry.id === HYDROGENSULFATE) return false;
  const ammonium = !isCation(index) && molesOf(entry, AMMONIA) > 0;
  const hydrolysed = isCation(index) && entry.water > 0 && entry.charge >= 0 && kindOf(entry) === "dissolved";
  return !ammonium && !hydrolysed;
}

/** One centre with so many ligands that it is an anion, written as a complex: what binds less hardly binds at all. */
function isComplex(entry: Species): boolean {
  if (entry.charge >= 0 || entry.charge < -MOST_CHARGE) return false;
  const own = entry.nu.filter(([index]) => index !== PROTON && index !== AMMONIA);
  const centres = own.filter(([index]) => !LIGANDS.includes(index));
  return centres.length === 1 && own.length > 1 && (entry.id.startsWith("[") || entry.id === TRIIODIDE);
}

/** A change that is a smaller part of all there is of the component decides nothing. */
const NOTICED_PART = 0.02;

/**
 * The form that supplies a component (`wanted`) or takes it up: the one that really shrinks or grows most. Where none plainly does, the one
 * of which there is most.
 */
export function formOf(
  index: number,
  wanted: boolean,
  { before, after, not }: { before: Amounts; after: Amounts; not: readonly string[] },
): Species {
  const [from, to] = wanted ? [after, before] : [before, after];
  const all = forms.get(index) ?? [];
  let changed: { one: Species; value: number } | undefined;
  let most: { one: Species; value: number } | undefined;
  for (const { one, moles, dissolved } of all) {
    if (not.includes(one.id)) continue;
    const there = to.get(one.id) ?? 0;
    const change = (there - (from.get(one.id) ?? 0)) * moles;
    if (change > (changed?.value ?? 0)) changed = { one, value: change };
    if (dissolved && there * moles > (most?.value ?? 0)) most = { one, value: there * moles };
  }
  if (changed && changed.value >= totalOf(index, to) * NOTICED_PART) return changed.one;
  return most?.one ?? changed?.one ?? database.species[index];
}
