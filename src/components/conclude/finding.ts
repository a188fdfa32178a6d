/** What a record leads to, worked out once for all that tells of it. */
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import { type Candidate, candidates } from "../../engine/deduction/candidates.ts";
import type { Agreement } from "../../engine/deduction/conclusion.ts";
import { agreementOf } from "../../engine/deduction/deduce.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import type { IonNames } from "../names.ts";
import { headline } from "./headline.ts";

/** A record of a practical. */
export interface Recorded {
  table: PredictionTable;
  /** Names of the ions the paper allows. */
  names: IonNames;
  record: TableRecord;
}

export interface Finding {
  /** What to repeat where nothing agrees is looked for apart: it takes as long as all the rest. */
  conclusion: Agreement;
  /** By place of the sample: every salt it may hold, held against its own observations. */
  candidates: Candidate[][];
  /** One sentence for each sample; formulas in mhchem notation. */
  headlines: string[];
}

/** Records are replaced and never changed, so one that is met again leads to the same. */
const known = new WeakMap<PredictionTable, WeakMap<TableRecord, Finding | undefined>>();

/** @returns undefined where the paper ties its samples together in too many ways to follow */
export function findingOf(of: Recorded): Finding | undefined {
  const ofTable = known.get(of.table) ?? new WeakMap<TableRecord, Finding | undefined>();
  known.set(of.table, ofTable);
  if (!ofTable.has(of.record))
    ofTable.set(
      of.record,
      unlessTooMuch(() => find(of)),
    );
  return ofTable.get(of.record);
}

/** The salts that fit every observation of the sample itself. */
const fitting = (list: Candidate[]) => list.flatMap(({ salt, clashes }) => (clashes.length === 0 ? [salt] : []));

function find({ table, names, record }: Recorded): Finding {
  const conclusion = agreementOf(table, record);
  const all = table.samples.map((_, s) => candidates(table, record, s));
  const alone = all.map(fitting);
  const stuck = table.samples.flatMap(({ label }, s) => (alone[s].length === 0 ? [label] : []));
  return {
    conclusion,
    candidates: all,
    headlines: conclusion.samples.map((each, s) => headline(table, names, conclusion, each, stuck, alone[s])),
  };
}
