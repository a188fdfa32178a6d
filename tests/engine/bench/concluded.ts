/** What follows from a record written as a textbook has it, on a paper of one sample. */
import { createPredictor } from "../../../src/engine/bench/predictor.ts";
import { tabulate } from "../../../src/engine/bench/tabulate.ts";
import { deduce } from "../../../src/engine/deduction/deduce.ts";
import { ownRecord } from "../../../src/engine/deduction/own-record.ts";
import { type Observation, procedure, type Sample, statement } from "../../../src/engine/practical.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";
import { solve } from "./show.ts";

const predictor = createPredictor(solve);

interface Paper {
  cations: readonly string[];
  anions: readonly string[];
  /** The tests of each part, each as its steps. */
  parts: readonly (readonly (readonly unknown[])[])[];
  given?: Sample["given"];
}

const SOLUTION = { given: "solution", concentration: { molPerDm3: 0.1 } } as const;

/** Formulas of the salts that the sample can still be, by the id of the cell: "a", "b(ii)". */
export function concluded({ cations, anions, parts, given }: Paper, record: Record<string, Observation>): string[] {
  const { table } = tabulate(
    {
      samples: [{ label: "X", ...(given === "solid" ? { given } : SOLUTION) }],
      paper: statement.parse({ cations, anions }),
      parts: procedure.parse(
        parts.map((tests, at) => ({ label: "abcdefgh"[at], title: "test", tests: tests.map((steps) => ({ steps })) })),
      ),
    },
    predictor,
    phrase,
  );
  const read = ownRecord(table, { X: record });
  const [sample] = deduce(read.table, read.record).samples;
  return sample.salts.map((salt) => table.salts[salt].formula);
}
