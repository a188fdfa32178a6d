/** Every formula the constants hold, by where it stands: what the readers of formulas are tried on. */

import { ionNames } from "#words/ion-names.ts";
import { ANIONS, CATIONS } from "../../../src/engine/constants/ions.ts";
import { basis, reactions } from "../../../src/engine/constants/log-k/index.ts";
import { couples } from "../../../src/engine/constants/potentials.ts";
import { ALSO_SOLD } from "../../../src/engine/constants/preparation.ts";
import { reagents } from "../../../src/engine/constants/reagents.ts";
import { salts } from "../../../src/engine/constants/salts.ts";
import { stocks } from "../../../src/engine/constants/stocks.ts";
import { SUBSTANCES } from "../../../src/engine/constants/thermochemistry/index.ts";
import { parseEquation } from "../../../src/engine/formula/equation.ts";

const inEquation = (text: string): string[] => {
  const { left, right } = parseEquation(text);
  return [...left, ...right].map(({ formula }) => formula.text);
};
const each = (formulas: readonly string[]): string[] => [...new Set(formulas)].filter((formula) => formula !== "e-");

/** Formulas in mhchem notation as they stand in the constants, states and forms included; the electron, which is none, left out. */
export const knownFormulas: Readonly<Record<string, string[]>> = {
  "salts of the store and their ions": each(salts.flatMap(({ formula, ions }) => [formula, ...Object.keys(ions)])),
  "reagents and what they bring": each(
    reagents.flatMap(({ formula, components }) => [...(formula ? [formula] : []), ...Object.keys(components)]),
  ),
  "other bottles of the store, and stocks": each([...ALSO_SOLD, ...stocks].map(({ formula }) => formula)),
  "ions a paper offers, and ions with a name": each([...CATIONS, ...ANIONS, ...Object.keys(ionNames)]),
  "components and species of the constants": each([
    ...basis.map(({ id }) => id),
    ...reactions.flatMap(({ reaction }) => inEquation(reaction)),
  ]),
  "couples of the potentials": each(
    couples.flatMap(({ half, written }) => [...inEquation(half), ...(written ? inEquation(written) : [])]),
  ),
  "substances of the heating tables": each(SUBSTANCES.map(({ formula }) => formula)),
};
