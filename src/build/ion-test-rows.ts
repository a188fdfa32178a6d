/** What an ion test shows for every ion of its kind on the school list, worked out from the steps its page names. */
import { predictSalt } from "../engine/bench/predict.ts";
import type { Prediction } from "../engine/bench/prediction.ts";
import { saltOf } from "../engine/bench/salt.ts";
import { ION_LISTS } from "../engine/constants/ions.ts";
import { createSolver } from "../engine/equilibrium/solve.ts";
import type { Procedure, Step } from "../engine/practical.ts";
import { phrase } from "../engine/wording/phrase.ts";

/** Steps of the test in the stages at which one looks, each with the heading of its column. */
export interface TriedStage {
  heading: string;
  steps: Step[];
}

export interface IonTestRow {
  /** One ion, or all ions for which nothing is seen. */
  ions: string[];
  /** One for each stage. */
  sights: string[];
  /** Net ionic equations of what happens, mhchem. */
  equations: string[];
}

/** Strength of the sample, mol/dm3, and the partner ions that bring no change of their own: stated beside the table. */
export const TRIED_AT = 0.1;
const PARTNER = { cation: "NO3-", anion: "Na+" } as const;

const solve = createSolver();

/** Rows for all ions of the kind, those with nothing to see gathered in the last. */
export function ionTestRows(kind: "cation" | "anion", stages: readonly TriedStage[]): IonTestRow[] {
  const parts: Procedure = [{ label: "a", title: "test", tests: stages.map(({ steps }) => ({ steps })) }];
  const rows = ION_LISTS.school[`${kind}s`].map((ion) => {
    const salt = kind === "cation" ? saltOf(ion, PARTNER.cation) : saltOf(PARTNER.anion, ion);
    const shown = [...predictSalt({ ions: salt.ions, molPerDm3: TRIED_AT }, parts, solve).values()];
    return {
      ions: [ion as string],
      sights: shown.map(wordReadings),
      equations: equationsOf(shown),
      silent: shown.every(isSilent),
    };
  });
  const silent = rows.filter((row) => row.silent);
  const telling = rows.filter((row) => !row.silent).map(({ ions, sights, equations }) => ({ ions, sights, equations }));
  if (silent.length === 0) return telling;
  return [...telling, { ions: silent.flatMap(({ ions }) => ions), sights: silent[0].sights, equations: [] }];
}

const wordReadings = ({ readings }: Prediction): string => readings.map((reading) => phrase(reading)).join(", or ");

const isSilent = ({ readings }: Prediction): boolean => readings.length === 1 && readings[0].none === true;

function equationsOf(shown: readonly Prediction[]): string[] {
  const told = shown.flatMap(({ events }) => events.flatMap(({ equation }) => equation ?? []));
  return [...new Set(told)];
}
