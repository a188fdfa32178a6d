/** Every way a heated solid may change, by its kind; which of them goes first is for the course to decide. */
import { ammoniumWays } from "./ammonium.ts";
import { carbonateWays } from "./carbonates.ts";
import { halideWays } from "./halides.ts";
import type { MakeUp } from "./make-up.ts";
import { makeUpOf } from "./make-up.ts";
import { nitrateWays } from "./nitrates.ts";
import { oxideWays } from "./oxides.ts";
import { type HeatReaction, reactionOf, type Substance, solid } from "./reaction.ts";
import { sulfurWays } from "./sulfur-salts.ts";
import { hydroxideWays, waterWays } from "./water.ts";

/** What may be there after a change: one list of substances a way. */
export type Ways = Substance[][];

/** The kinds of salt, each with its ways; a kind returns none for a solid that is not of its kind. */
const KINDS: readonly ((makeUp: MakeUp, formula: string) => Ways)[] = [
  waterWays,
  ammoniumWays,
  carbonateWays,
  hydroxideWays,
  nitrateWays,
  sulfurWays,
  halideWays,
  oxideWays,
];

/**
 * The balanced reactions by which a solid may fall apart.
 *
 * @example waysOf("CaCO3").map((way) => way.equation) // ["CaCO3(s) = CaO(s) + CO2(g)"]
 */
export function waysOf(formula: string): HeatReaction[] {
  const makeUp = makeUpOf(formula);
  return KINDS.flatMap((kind) => kind(makeUp, formula)).flatMap((products) => {
    const reaction = reactionOf([solid(formula)], products);
    return reaction === undefined ? [] : [reaction];
  });
}
