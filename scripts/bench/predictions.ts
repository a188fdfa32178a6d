/** Predictions: one test drop by drop, the published table, and whole practicals. */
import { pairsOf } from "../../src/engine/bench/allowed-salts.ts";
import { asSample } from "../../src/engine/bench/as-sample.ts";
import { predictSalt } from "../../src/engine/bench/predict.ts";
import type { Predictor } from "../../src/engine/bench/predictor.ts";
import { saltOf } from "../../src/engine/bench/salt.ts";
import { formKey } from "../../src/engine/bench/tabulate.ts";
import { cannotBe, createPredictor, createSolver, type Practical, phrase, tabulate } from "../../src/engine/index.ts";
import { procedure, statement } from "../../src/engine/practical.ts";
import { publishedRows, trialsOf } from "../../tests/verification/qualitative-rows.ts";
import { linearSolveMs } from "./equilibrium.ts";
import { procedureOf25 } from "./procedure-of-25.ts";
import { processorTime, rounded, say, times } from "./timing.ts";

const ROUNDS = { brief: 101, table: 15, practical: 15, borders: 3, practical25: 7 };

/** By the clock, for what takes less than the processor's own count can tell. */
const briefly = (rounds: number, call: () => unknown): number => rounded(times(rounds, [call])[0]);

const medianOf = (rounds: number, call: () => unknown): number => rounded(processorTime(rounds, call));

/** With equations, as a build needs them. */
const predictor = (): Predictor => createPredictor(createSolver(), undefined, predictSalt);

function dropsMs(): number {
  say("predict: one test drop by drop");
  const solve = createSolver();
  const tests = [
    { steps: [{ take: "1 cm3" }, { add: "NaOH(aq)", drops: 5 }] },
    { steps: [{ add: "NaOH(aq)", until: "in excess" }] },
  ];
  const parts = procedure.parse([{ label: "a", title: "Alkali", tests }]);
  const salt = { ions: saltOf("Zn^2+", "SO4^2-").ions, molPerDm3: 0.1 };
  return briefly(ROUNDS.brief, () => predictSalt(salt, parts, solve));
}

function tableMs(): number {
  const trials = publishedRows.flatMap((row) => {
    const of = trialsOf(row);
    return typeof of === "string" ? [] : of;
  });
  say(`predict: the published table, ${trials.length} trials`);
  const work = trials.map(({ salt, steps }) => ({
    salt,
    parts: procedure.parse([{ label: "a", title: "test", tests: steps.map((each) => ({ steps: each })) }]),
  }));
  return medianOf(ROUNDS.table, () => {
    const solve = createSolver();
    for (const { salt, parts } of work) predictSalt(salt, parts, solve);
  });
}

/** Every salt a practical allows as its samples, through the whole procedure. */
function everySalt(
  { samples, paper, parts }: Pick<Practical, "samples" | "paper" | "parts">,
  { solve, predict }: Predictor,
): void {
  const forms = new Map(samples.map((sample) => [formKey(sample), sample]));
  for (const form of forms.values()) {
    for (const salt of pairsOf(paper)) {
      if (cannotBe(salt, form, solve) === undefined) predict(asSample(salt, form), parts);
    }
  }
}

function practical25() {
  say("predict: all school salts through 25 tests");
  const practical = {
    samples: [{ label: "A", given: "solution" as const, concentration: { molPerDm3: 0.1 }, salt: "ZnSO4" }],
    paper: statement.parse({ cations: "school", anions: "school" }),
    parts: procedureOf25,
  };
  const known = predictor();
  const practical25Ms = medianOf(ROUNDS.practical25, () => everySalt(practical, predictor()));
  return {
    practical25Ms,
    practical25ToLinearSolve: rounded(practical25Ms / linearSolveMs()),
    practical25AgainMs: briefly(ROUNDS.brief, () => everySalt(practical, known)),
  };
}

/** @param practical the practical whose salts are all taken through its own procedure */
export function benchPredict(practical: Practical) {
  return {
    dropsMs: dropsMs(),
    tableMs: tableMs(),
    practicalMs: medianOf(ROUNDS.practical, () => everySalt(practical, predictor())),
    bordersMs: medianOf(ROUNDS.borders, () => tabulate(practical, predictor(), phrase)),
    ...practical25(),
  };
}
