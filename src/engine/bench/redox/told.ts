/**
 * Changes of oxidation state as a person would write them. What happens drop by drop and form by form is one reaction: a substance is named
 * by the form that was poured in, an oxide of manganese that comes and goes again is left out, and what is too little beside another
 * reaction of the same reagent is not told.
 */
import { compileDatabase } from "../../equilibrium/species.ts";
import type { Amounts } from "../amounts.ts";
import { totalOf } from "../total-of.ts";
import type { Reacted } from "../tube.ts";
import { type HalfEquation, halfEquations, type Part } from "./half-equation.ts";
import { pairEquation } from "./pair-equation.ts";
import { type Pair, pairOf } from "./pairs.ts";

export interface Told {
  pair: string;
  /** Balanced, mhchem with states. */
  equation: string;
  source: string;
}

/** What was brought together, what is there at the end, and how acid that is. */
interface Change {
  before: Amounts;
  after: Amounts;
  pH: number;
}

/** One form of a reaction. */
interface Variant {
  pair: Pair;
  equation: string;
  /** Passed in this form, mol. */
  electrons: number;
}

/** Reactions between the same components, whatever their forms. */
interface Reaction {
  oxidant: string;
  reductant: string;
  variants: Variant[];
  /** Passed in all, mol. */
  electrons: number;
  source: string;
}

/** A reaction that passes fewer electrons than this part of what another one of the same reagent passes goes unnoticed. */
const NOTICED_PART = 0.01;
/** What is left of an intermediate when it has gone again, as a part of all that was made. */
const GONE = 0.05;
/** Above this pH an equation is written with hydroxide. */
const ALKALINE = 9;

/** The reactions of a test, in the order in which they began. */
export function toldReactions(reactions: readonly Reacted[], change: Change): Told[] {
  const all = joined(gathered(reactions), change);
  const most = (of: "oxidant" | "reductant", family: string) =>
    Math.max(...all.filter((one) => one[of] === family).map(({ electrons }) => electrons));
  return all
    .filter(({ oxidant, reductant, electrons }) => {
      const beside = Math.max(most("oxidant", oxidant), most("reductant", reductant));
      return electrons >= NOTICED_PART * beside;
    })
    .map(({ variants, source }) => {
      const { pair, equation } = best(variants, change);
      return { pair: pair.id, equation, source };
    });
}

function gathered(reactions: readonly Reacted[]): Reaction[] {
  const found = new Map<string, Reaction>();
  for (const { pair: id, equation, turns, electrons: each, source } of reactions) {
    const pair = pairOf(id);
    const { family: oxidant } = pair.oxidant;
    const { family: reductant } = pair.reductant;
    const key = `${oxidant} with ${reductant}`;
    const one = found.get(key) ?? { oxidant, reductant, variants: [], electrons: 0, source };
    const electrons = turns * each;
    one.variants.push({ pair, equation, electrons });
    one.electrons += electrons;
    found.set(key, one);
  }
  return [...found.values()];
}

/** Puts a first step and the second that uses its product up into one, where the table has the couple of both. */
function joined(all: readonly Reaction[], change: Change): Reaction[] {
  for (const first of all) {
    for (const second of all) {
      const [from, between] = first.oxidant.split(" to ");
      const [again, to] = second.oxidant.split(" to ");
      if (first === second || between !== again || first.reductant !== second.reductant) continue;
      const direct = halfEquations.filter(({ family }) => family === `${from} to ${to}`);
      if (direct.length === 0 || !hasGone(between, first, change)) continue;
      const both: Reaction = {
        ...first,
        oxidant: direct[0].family,
        electrons: first.electrons + second.electrons,
        variants: [...first.variants, ...second.variants].flatMap(({ pair, electrons }) =>
          direct.map((oxidant) => asOne(oxidant, pair, electrons, change)),
        ),
      };
      return joined([...all.filter((one) => one !== first && one !== second), both], change);
    }
  }
  return [...all];
}

function asOne(oxidant: HalfEquation, { reductant }: Pair, electrons: number, { pH }: Change): Variant {
  const pair: Pair = { oxidant, reductant, id: `${oxidant.couple.id} with ${reductant.couple.id}` };
  return { pair, equation: pairEquation(oxidant, reductant, pH > ALKALINE ? pH : 0).text, electrons };
}

/** True when hardly anything is left of what the first step made, and nothing of it was there before. */
function hasGone(component: string, { variants, electrons }: Reaction, { before, after }: Change): boolean {
  const index = compileDatabase().componentIndex.get(component);
  if (index === undefined || totalOf(index, before) > 0) return false;
  const [{ pair }] = variants;
  const each = pair.oxidant.reduced.reduce(
    (sum, part) => sum + part.coefficient * (part.components[component] ?? 0),
    0,
  );
  return totalOf(index, after) <= (GONE * electrons * each) / pair.oxidant.electrons;
}

/** The form whose reactants were really there and went; of equals, the one that passed most. */
function best(variants: readonly Variant[], change: Change): Variant {
  const went = new Map(variants.map((one) => [one, spent(one.pair, change)]));
  return variants.reduce((first, one) => {
    const more = (went.get(one) ?? 0) - (went.get(first) ?? 0);
    return more > 0 || (more === 0 && one.electrons > first.electrons) ? one : first;
  });
}

/** How much of the scarcest reactant went, mol for each of it in a turn; 0 when one did not shrink. */
function spent({ oxidant, reductant }: Pair, { before, after }: Change): number {
  const parts = [...oxidant.oxidised, ...reductant.reduced].filter(
    ({ id, state }) => state !== "gas" && !WATER.includes(id),
  );
  return Math.max(0, Math.min(...parts.map((part) => shrunk(part, before, after))));
}
const WATER = ["H+", "OH-", "H2O"];
const shrunk = ({ id, coefficient }: Part, before: Amounts, after: Amounts): number =>
  ((before.get(id) ?? 0) - (after.get(id) ?? 0)) / coefficient;
