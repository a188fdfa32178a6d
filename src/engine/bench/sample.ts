/** The sample of a test: a salt in solution or as a solid, and how a portion of it gets into the tube. */

import { COLOURS } from "../constants/colours.ts";
import { salts as store } from "../constants/salts.ts";
import type { Solver } from "../equilibrium/solve.ts";
import { compileDatabase, WATER } from "../equilibrium/species.ts";
import { molarMass } from "../formula/molar-mass.ts";
import { parseFormula } from "../formula/parse.ts";
import type { Colour, Step } from "../practical.ts";
import { amountsAlone } from "./alone.ts";
import { type Amounts, addAmounts } from "./amounts.ts";
import { type Components, componentsOf } from "./composition.ts";
import { NOTHING_POURED, type Poured } from "./portion.ts";
import type { DrySample } from "./trace.ts";
import { pour, type Tube } from "./tube.ts";

/** A sample to be tested: its ions, how it is given, and as what solid it is weighed out. */
export interface TestedSalt {
  /** Number of each ion in one formula unit. */
  ions: Readonly<Record<string, number>>;
  /** mol/dm3, when a solution is taken. */
  molPerDm3?: number;
  /** Formula by which the solid is weighed, water of crystallisation included. */
  solid?: string;
}

/** What has been taken of a sample into one tube. */
export interface Portion {
  salt: TestedSalt;
  /** What has gone into the tube so far, by the paper. */
  poured: Poured;
  /** A solid that has not met water yet. */
  dry: DrySample | undefined;
  /** It has been heated dry. */
  heated?: true;
}

/** A tube for this sample, with nothing in it yet. */
export const nothingTaken = (salt: TestedSalt): Portion => ({ salt, poured: NOTHING_POURED, dry: undefined });

const database = compileDatabase();

/**
 * Takes a portion into the tube and adds it, as it is by itself, to the amounts brought together.
 * @throws RangeError when the sample is not given in the form that is taken
 */
export function take(
  step: Extract<Step, { do: "take" }>,
  tube: Tube,
  portion: Portion,
  together: Amounts,
  solve: Solver,
): void {
  const components = componentsOf(portion.salt.ions);
  if ("volume" in step) {
    const strength = portion.salt.molPerDm3;
    if (strength === undefined)
      throw new RangeError(`${step.volume.cm3} cm3 taken of a sample that is given as a solid only`);
    const perDm3 = times(components, strength);
    pour(tube, perDm3, step.volume.cm3);
    addAlone(together, perDm3, step.volume.cm3, solve);
    return;
  }
  const formula = portion.salt.solid;
  if (formula === undefined)
    throw new RangeError(`${step.mass.g} g taken of a sample that is given as a solution only`);
  const mol = step.mass.g / molarMass(parseFormula(formula));
  const own = sameSubstance(components);
  for (const [id, count] of Object.entries(components)) tube.contents[id] = (tube.contents[id] ?? 0) + count * mol;
  tube.contents[WATER] = (tube.contents[WATER] ?? 0) + crystalWater(formula) * mol;
  // What comes out of the jar is the stable form, even where it would not form in minutes.
  tube.opened = [...new Set([...tube.opened, ...own])];
  portion.dry = { grams: step.mass.g, mol, own, colour: solidColour(formula) };
  addDry(together, portion.salt.ions, mol, own);
}

/** Adds a solution, speciated by itself, to amounts. */
export function addAlone(to: Amounts, perDm3: Readonly<Components>, cm3: number, solve: Solver): void {
  const bottle = amountsAlone(perDm3, solve);
  if (bottle) addAmounts(to, bottle, cm3 / 1000);
}

/** A dry sample as an equation shows it: its most stable solid of the constant set, or else its free ions, hydrogencarbonate as such. */
function addDry(to: Amounts, ions: Readonly<Record<string, number>>, mol: number, own: ReadonlySet<string>): void {
  const solid = [...own].sort((a, b) => logK(a) - logK(b))[0];
  if (solid) addAmounts(to, new Map([[solid, mol]]));
  else addAmounts(to, new Map(Object.entries(ions).flatMap(([ion, n]) => asFound(ion, n))), mol);
}

/** An ion that is a species stands as it is; any other as the components it brings. */
const asFound = (ion: string, count: number): [string, number][] =>
  speciesIds.has(ion)
    ? [[ion, count]]
    : Object.entries(times(componentsOf({ [ion]: 1 }), count)).filter(([id]) => id !== WATER);
const speciesIds = new Set(database.species.map(({ id }) => id));

const logK = (id: string): number => database.phases.find((phase) => phase.id === id)?.logK ?? 0;

/** Solids of the constant set made of the same components in the same proportion, water of crystallisation aside. */
function sameSubstance(components: Components): ReadonlySet<string> {
  const wanted = Object.entries(components).filter(([id, n]) => n !== 0 && id !== WATER);
  const same = database.phases.filter(({ kind, nu }) => {
    if (kind !== "solid" || nu.length !== wanted.length) return false;
    const ratios = wanted.map(([id, n]) => (nu.find(([c]) => database.components[c].id === id)?.[1] ?? 0) / n);
    return ratios.every((ratio) => ratio > 0 && Math.abs(ratio - ratios[0]) < 1e-9);
  });
  return new Set(same.map(({ id }) => id));
}

/** Water of crystallisation in one formula unit, mol. */
function crystalWater(formula: string): number {
  const match = /[*.](\d*(?:\.\d+)?)H2O$/.exec(formula);
  return match ? Number(match[1] || 1) : 0;
}

/** Colour of the solid as bought; white where the store's list says nothing of colour. */
function solidColour(formula: string): Colour {
  const appearance = store.find((salt) => salt.formula === formula)?.appearance ?? "";
  const names = (Object.keys(COLOURS) as Colour[]).filter((name) => name !== "colourless" && appearance.includes(name));
  return names.sort((a, b) => b.length - a.length)[0] ?? "white";
}

const times = (components: Components, factor: number): Components =>
  Object.fromEntries(Object.entries(components).map(([id, count]) => [id, count * factor]));
