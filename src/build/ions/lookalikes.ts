/** Which ions are easily taken for which, and the tests that tell them apart: read from what the engine predicts of both. */
import { ANIONS, CATIONS } from "../../engine/constants/ions.ts";
import type { StandardTest } from "../../engine/constants/standard-tests.ts";
import { alike, isFor, rankFor, type StandardSight, standardSights } from "./standard-sights.ts";
import { isCation } from "./tried.ts";

export interface Lookalike {
  ion: string;
  /** Tests in which both show something, and the same. */
  alikeIn: StandardTest[];
  /** The first tests of the list that surely tell the two apart. */
  apartIn: StandardTest[];
}

/** Tests named that tell two ions apart: one is enough, the second is there for a bench that lacks the first. */
const NAMED = 2;

/** Ions of the same kind that look alike in at least one test, those alike in most tests first. */
export function lookalikes(ion: string): Lookalike[] {
  const own = standardSights(ion);
  return others(ion)
    .map((other): Lookalike => {
      const pairs = own.filter(tellsSomething(ion)).flatMap((sight): [StandardSight, StandardSight][] => {
        const same = standardSights(other).find(({ test }) => test === sight.test);
        return same ? [[sight, same]] : [];
      });
      return {
        ion: other,
        alikeIn: pairs.filter(([a, b]) => a.own && b.own && alike(a, b)).map(([{ test }]) => test),
        apartIn: pairs
          .flatMap(([a, b]) => (alike(a, b) ? [] : [a.test]))
          .sort((a, b) => rankFor(ion, a) - rankFor(ion, b))
          .slice(0, NAMED),
      };
    })
    .filter(({ alikeIn }) => alikeIn.length > 0)
    .sort((a, b) => b.alikeIn.length - a.alikeIn.length);
}

/** Tests in which nearly everything gives the same white solid, or which repeat another one: no reason to take two ions for each other. */
const SAYS_LITTLE = ["carbonate-or-not", "chromate", "ammonium"];

const tellsSomething =
  (ion: string) =>
  (sight: StandardSight): boolean =>
    isFor(ion, sight.test) && (!SAYS_LITTLE.includes(sight.test.id) || sight.gases.length > 0);

/** Of one test, the other ions of the same kind that show the same. */
export const sharedBy = (ion: string, sight: StandardSight): string[] =>
  others(ion).filter((other) => {
    const same = standardSights(other).find(({ test }) => test === sight.test);
    return same?.own && alike(sight, same);
  });

/** Oxide is hydroxide once it has met water: the two are one in solution. */
const OXIDE = "O^2-";

const others = (ion: string): string[] =>
  (isCation(ion) ? CATIONS : ANIONS).filter((one) => one !== ion && one !== OXIDE);
