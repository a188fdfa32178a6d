/** What a test shows for every ion of one kind, worked out from the steps its page names. */
import type { Prediction } from "../engine/bench/prediction.ts";
import { ION_LISTS } from "../engine/constants/ions.ts";
import type { GivenOff, Part, Step } from "../engine/practical.ts";
import { department } from "./department/department.ts";
import { atHouseStrengths } from "./department/strengths.ts";
import { blankFor, tryIon } from "./ions/tried.ts";

/** Steps of the test in the stages at which one looks, each with the heading of its column. */
export interface TriedStage {
  heading: string;
  steps: Step[];
}

export interface IonTestRow {
  ion: string;
  /** One for each stage. */
  stages: Prediction[];
  gases: GivenOff[];
}

export interface IonTestRows {
  /** Ions of the school list that show something of their own. */
  school: IonTestRow[];
  /** The same of the ions that only the advanced list has. */
  advanced: IonTestRow[];
  /** Ions that change nothing in the test, and what is then seen, as with water. */
  silent: { ions: string[]; stages: Prediction[] };
}

/** Rows for the ions of a kind, in the order of the constants, with the school's own bottles. */
export function ionTestRows(kind: "cation" | "anion", stages: readonly TriedStage[]): IonTestRows {
  const written: Part = { label: "a", title: "test", tests: stages.map(({ steps }) => ({ steps })) };
  const [part] = atHouseStrengths([written], department());
  const school: readonly string[] = ION_LISTS.school[`${kind}s`];
  const rows: IonTestRow[] = [];
  const silent: string[] = [];
  for (const ion of ION_LISTS.advanced[`${kind}s`]) {
    const sight = tryIon(ion, part);
    if (!sight) continue;
    if (sight.own) rows.push({ ion, stages: sight.stages, gases: sight.gases });
    else silent.push(ion);
  }
  return {
    school: rows.filter(({ ion }) => school.includes(ion)),
    advanced: rows.filter(({ ion }) => !school.includes(ion)),
    silent: { ions: silent, stages: blankFor(kind, part) },
  };
}
