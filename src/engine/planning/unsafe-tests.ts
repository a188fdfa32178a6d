/** Tests that a paper asks for on samples that may be something no class puts through them: what is said of it beforehand. */
import * as say from "#words/bench.ts";
import { said } from "#words/constants.ts";
import { ionNames } from "#words/ion-names.ts";
import { salt } from "#words/salt-name.ts";
import type { PredictionTable } from "../bench/prediction-table.ts";
import { unsafeOn } from "../bench/unsafe-on.ts";
import type { Caution } from "../constants/bench-cautions.ts";
import type { NotGivenOut } from "../constants/not-given-out.ts";
import { cellsOf } from "../practical/cells.ts";
import type { Part } from "../practical.ts";

/** A part that is unsafe on what some of its samples may be, one for each step that makes it so. */
export interface UnsafeTest {
  part: string;
  step: NotGivenOut["step"];
  /** Letters, in the order of the paper. */
  samples: string[];
  rows: NotGivenOut[];
}

/** From the salts each sample may hold, by the table's `unsafeOn`. The table has one cell for each line of the record. */
export function unsafeTests(parts: Part[], table: PredictionTable): UnsafeTest[] {
  const found = new Map<string, UnsafeTest>();
  cellsOf(parts).forEach(({ part, test }, index) => {
    const { unsafeOn: salts = [], samples } = table.cells[index];
    for (const { label, set } of table.samples) {
      const mayBe = samples.includes(label) ? salts.filter((salt) => table.sets[set].salts.includes(salt)) : [];
      for (const row of new Set(mayBe.flatMap((salt) => unsafeOn(test.steps, table.salts[salt])))) {
        const key = `${part.label} ${row.step}`;
        const one = found.get(key) ?? { part: part.label, step: row.step, samples: [], rows: [] };
        if (!one.samples.includes(label)) one.samples.push(label);
        if (!one.rows.includes(row)) one.rows.push(row);
        found.set(key, one);
      }
    }
  });
  return [...found.values()];
}

const named = ({ ions }: NotGivenOut): string => {
  const [first, ...others] = ions.map((ion) => ionNames[ion] ?? ion);
  return others.length > 0 ? salt([first], others) : first;
};

/** Two ions are a salt, one is in many. */
const mayBe = (rows: readonly NotGivenOut[]) => ({
  salts: rows.filter(({ ions }) => ions.length > 1).map(named),
  ions: rows.filter(({ ions }) => ions.length === 1).map(named),
});

/** One warning for each part: what its samples may be that is not treated so. */
export const unsafeWarnings = (tests: readonly UnsafeTest[]): { part: string; says: string }[] =>
  tests.map(({ part, step, samples, rows }) => ({
    part,
    says: say.unsafe(samples, step, mayBe(rows)),
  }));

/** One caution for each row, in the words of the data. All can kill or poison. */
export const unsafeCautions = (tests: readonly UnsafeTest[]): Pick<Caution, "rank" | "text">[] =>
  [...new Set(tests.flatMap(({ rows }) => rows))].map((row) => ({
    rank: 0,
    text: say.unsafeCaution(mayBe([row]), said(row.reason)),
  }));
