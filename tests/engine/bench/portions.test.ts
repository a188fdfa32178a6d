/**
 * A volume poured in growing portions shows what the same volume shows half a drop at a time: no precipitate is missed, none invented, and
 * none ends otherwise. Strengths are those between which schools make up samples.
 */
import { describe, expect, test } from "vitest";
import { predictSalt } from "../../../src/engine/bench/predict.ts";
import { saltOf } from "../../../src/engine/bench/salt.ts";
import { CATIONS } from "../../../src/engine/constants/ions.ts";
import { type Observation, procedure } from "../../../src/engine/practical.ts";
import { solve, take } from "./show.ts";

const HALF_DROP = 0.025;

/** @param times how often the reagent is added: more often than a paper may write steps */
function readings(cation: string, molPerDm3: number, add: unknown, times = 1): Observation[] {
  const [part] = procedure.parse([{ label: "a", title: "test", tests: [{ steps: [take, add] }] }]);
  const [test] = part.tests;
  const [taken, added] = test.steps;
  const parts = [{ ...part, tests: [{ ...test, steps: [taken, ...Array.from({ length: times }, () => added)] }] }];
  return predictSalt({ ions: saltOf(cation, "NO3-").ions, molPerDm3 }, parts, solve).get("a")?.readings ?? [];
}

/** What is said of solids, the likeliest first. */
const solids = (all: Observation[]) =>
  [all[0]].map(({ precipitate, fate }) => ({ precipitate: precipitate ? precipitate.colour : undefined, fate }));

describe.each(["NaOH(aq)", "NH3(aq)"])("%s, 2 cm3 at once", (reagent) => {
  test.each(CATIONS.flatMap((cation) => [0.02, 0.05, 0.1, 0.2].map((at) => [cation, at] as const)))(
    "%s at %d mol/dm3",
    (cation, at) => {
      const poured = readings(cation, at, { add: reagent, volume: "2 cm3" });
      const halfDrops = readings(cation, at, { add: reagent, volume: `${HALF_DROP} cm3` }, 2 / HALF_DROP);
      expect(solids(poured)).toEqual(solids(halfDrops));
    },
  );
});
