/** The curves that say why an ion's precipitate comes, and goes or stays: one for each standard test that has something to tell. */

import { reagentName } from "#words/steps.ts";
import { type NamedCurve, namedCurve } from "../../engine/bench/named-curve.ts";
import { reagents } from "../../engine/constants/reagents.ts";
import type { StandardTest } from "../../engine/constants/standard-tests.ts";
import { isTelling } from "../curves.ts";
import { rounded } from "../live-curves.ts";
import { predictor } from "../predictor.ts";
import { partOf, standardSights } from "./standard-sights.ts";
import { TRIED_AT } from "./tried.ts";

export interface IonCurve {
  test: StandardTest;
  /** The salt drawn, mhchem. */
  salt: string;
  curve: NamedCurve;
  /** Name of the reagent. */
  reagent: string;
}

/** In this order; the curve of a later test tells an ion's story only where earlier ones do not. */
const DRAWN = [
  "sodium-hydroxide",
  "ammonia",
  "halide",
  "sulfate",
  "sulfite",
  "iodide",
  "lead",
  "chromate",
  "hydrogencarbonate",
];
const MOST = 2;

const known = new Map<string, IonCurve[]>();

/** At most two. */
export function ionCurves(ion: string): IonCurve[] {
  const before = known.get(ion);
  if (before) return before;
  const own = standardSights(ion).filter((sight) => sight.own && DRAWN.includes(sight.test.id));
  const inOrder = own.sort((a, b) => DRAWN.indexOf(a.test.id) - DRAWN.indexOf(b.test.id));
  const curves: IonCurve[] = [];
  for (const { test, salt } of inOrder) {
    const curve = curveIn(test, ion, salt.ions);
    if (curve) curves.push({ test, salt: salt.formula, curve, reagent: nameOf(curve.reagent) });
    if (curves.length === MOST) break;
  }
  known.set(ion, curves);
  return curves;
}

/**
 * The curves that say why a test shows what it shows: of the ions it finds, the first whose solid stays and the first whose solid goes again
 * in an excess. None where nothing comes and goes, as with gases and changes of colour.
 * @param standard ids of the standard tests the page tells of
 */
export function testCurves(standard: readonly string[], ions: readonly string[]): (IonCurve & { ion: string })[] {
  const curves = ions.flatMap((ion) =>
    standardSights(ion)
      .filter((sight) => sight.own && standard.includes(sight.test.id))
      .flatMap(({ test, salt }) => {
        const curve = curveIn(test, ion, salt.ions);
        return curve ? [{ ion, test, salt: salt.formula, curve, reagent: nameOf(curve.reagent) }] : [];
      }),
  );
  const goes = ({ curve }: IonCurve) => Object.keys(curve.dissolves).length > 0;
  const chosen = [curves.find((one) => !goes(one)), curves.find(goes)];
  return curves.filter((one) => chosen.includes(one));
}

/** The curve of the last stage in which this ion is what comes and goes. */
function curveIn(test: StandardTest, ion: string, ions: Readonly<Record<string, number>>): NamedCurve | undefined {
  const part = partOf(test);
  const salt = { ions, molPerDm3: TRIED_AT };
  const predicted = predictor.predict(salt, [part]);
  const drawn = part.tests.flatMap((_, n) => {
    const one = namedCurve({ sample: "", salt }, part, n, predictor.solve, predicted);
    return one && one.ion === ion && isTelling(one) ? [rounded(one)] : [];
  });
  return drawn.at(-1);
}

const nameOf = (id: string): string => reagentName(id, reagents.find((one) => one.id === id)?.name ?? id);
