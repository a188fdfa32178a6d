/** A small invented procedure with a table of predictions written by hand, for tests of the bench plan. */
import type { PredictionTable, TableCell } from "../../../src/engine/bench/prediction-table.ts";
import { isUnsafeOn } from "../../../src/engine/bench/unsafe-on.ts";
import type { Planned } from "../../../src/engine/planning/plan-bench.ts";
import { cellsOf, type Observation, type Practical, procedure, statement } from "../../../src/engine/practical.ts";

export const CHOICE = { testTube: "test-tube-125x16", boilingTube: "boiling-tube-150x25" };

/** A procedure in the short form an author writes, on samples of which each is given the same way. */
export function planned(
  parts: unknown,
  { letters = ["P", "Q"], given = "solution", molPerDm3 = 0.1, cations = ["NH4+", "Na+", "Zn^2+"] } = {} as {
    letters?: string[];
    given?: "solid" | "solution" | "both";
    molPerDm3?: number;
    cations?: string[];
  },
): Planned & Pick<Practical, "samples"> {
  return {
    samples: letters.map((label) => ({
      label,
      given,
      ...(given !== "solid" && { concentration: { molPerDm3 } }),
      salt: "ZnSO4*7H2O",
    })),
    parts: procedure.parse(parts),
    paper: statement.parse({ cations, anions: ["Cl-", "SO4^2-", "CO3^2-"] }),
  };
}

const SALTS = [
  { formula: "NH4Cl", cations: ["NH4+"], anions: ["Cl-"] },
  { formula: "(NH4)2SO4", cations: ["NH4+"], anions: ["SO4^2-"] },
  { formula: "Na2CO3", cations: ["Na+"], anions: ["CO3^2-"] },
  { formula: "ZnSO4", cations: ["Zn^2+"], anions: ["SO4^2-"] },
];

/**
 * The table of a procedure. `gives`: for a test, the gas and the salts (by formula) that give it off; the other salts show nothing
 * there. `salts` replaces the four allowed salts.
 */
export function tableOf(
  { samples, parts, paper }: Planned,
  gives: Record<string, [gas: Observation["gas"], from: string[]]> = {},
  salts = SALTS,
): PredictionTable {
  const letters = samples.map(({ label }) => label);
  const cells = cellsOf(parts).map(({ id, part, test }): TableCell => {
    const unsafeOn = [...salts.keys()].filter((index) => isUnsafeOn(test.steps, salts[index]));
    const readings: Observation[] =
      id in gives ? [{ none: true }, { effervescence: true, gas: gives[id][0] }] : [{ none: true }];
    return {
      id,
      samples: part.samples ?? letters,
      ...(unsafeOn.length > 0 && { unsafeOn }),
      readings,
      words: readings.map((_, index) => `reading ${index}`),
      agrees: readings.map((_, index) => 1 << index),
      comesOff: gasOf(
        gives[id]?.[0],
        salts.flatMap(({ formula }, index) => (gives[id]?.[1].includes(formula) ? [index] : [])),
      ),
    };
  });
  return {
    salts,
    cells,
    facts: [],
    sets: [
      {
        salts: salts.map((_, index) => index),
        main: salts.map(({ formula }) => cells.map(({ id }) => (gives[id]?.[1].includes(formula) ? 1 : 0))),
        atBorder: [],
        accepts: salts.map(({ formula }) => cells.map(({ id }) => (gives[id]?.[1].includes(formula) ? 0b10 : 0b01))),
        facts: salts.map(() => cells.map(() => -1)),
        cannotBe: [],
      },
    ],
    samples: letters.map((label) => ({ label, set: 0 })),
    paper,
  };
}

const gasOf = (gas: Observation["gas"], salts: number[]): TableCell["comesOff"] =>
  gas ? [{ gas: gas.formula, salts }] : [];
