/**
 * A reaction that ends before it is half through, and is not carried out (redox-changes.ts), may still make a solid that is seen. How far it
 * goes: to where Nernst's equation gives no force any more, at the present pH.
 */
import type { HalfEquation } from "./half-equation.ts";
import { ionicStrengthOf, potentialOf } from "./nernst.ts";
import { candidatesIn, type RedoxChange, type RedoxState, solutionAfter } from "./redox-changes.ts";

/** Steps of halving: one part in a thousand of the amount. */
const HALVINGS = 10;

/** The strongest of those reactions that makes a solid, with its turns; undefined where there is none. Those that have not the time are none. */
export function stopsShort(state: RedoxState): Pick<RedoxChange, "change" | "turns"> | undefined {
  const all = candidatesIn(state, (halfway) => halfway <= 0).filter(
    ({ extent, pair }) => extent === 1 && makesSolid(pair.oxidant.reduced, pair.reductant.oxidised),
  );
  if (all.length === 0) return undefined;
  const { pair, equation, possible } = all.reduce((a, b) => (b.emf > a.emf ? b : a));
  const { oxidant, reductant } = pair;
  const now = { ...state, ionicStrength: ionicStrengthOf(state.molality) };
  let [turns, tooMany] = [0, possible / 2];
  for (let n = 0; n < HALVINGS; n++) {
    const between = (turns + tooMany) / 2;
    const then = solutionAfter(now, state, equation, between, [oxidant, reductant]);
    if (potentialOf(oxidant, then) > potentialOf(reductant, then)) turns = between;
    else tooMany = between;
  }
  return { change: equation.change, turns };
}

const makesSolid = (...products: HalfEquation["oxidised"][]): boolean =>
  products.some((side) => side.some(({ state }) => state === "solid"));
