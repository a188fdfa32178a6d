/** Halides of metals with a lower halide, which lose halogen. */
import { saltOf } from "../salt.ts";
import { rowOf } from "./figures.ts";
import type { MakeUp } from "./make-up.ts";
import { freeMetal, metalOf } from "./oxide-series.ts";
import { gas, solid } from "./reaction.ts";
import type { Ways } from "./ways.ts";

const HALOGENS: Readonly<Record<string, string>> = { "Cl-": "Cl2", "Br-": "Br2", "I-": "I2" };
const LOWER = ["+", "^2+"];

export function halideWays({ water, cations, anions }: MakeUp, formula: string): Ways {
  const [anion] = anions;
  if (water > 0 || cations.length !== 1 || anions.length !== 1 || !Object.hasOwn(HALOGENS, anion)) return [];
  const metal = metalOf(cations[0]);
  const lower = LOWER.map((charge) => saltOf(metal + charge, anion).formula).filter(
    (other) => other !== formula && rowOf(solid(other)) !== undefined,
  );
  return [...lower, ...freeMetal(cations[0])].map((left) => [solid(left), gas(HALOGENS[anion])]);
}
