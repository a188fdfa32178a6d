/** All that a walkthrough page shows of one practical, computed at build. */
import type { Borderline } from "../engine/bench/borderline.ts";
import type { Interference } from "../engine/bench/interference.ts";
import type { NamedCurve } from "../engine/bench/named-curve.ts";
import type { Prediction } from "../engine/bench/prediction.ts";
import type { PredictionTable, TableRecord } from "../engine/bench/prediction-table.ts";
import type { Certificate } from "../engine/deduction/certificate.ts";
import type { Conclusion, Purpose } from "../engine/deduction/conclusion.ts";
import type { FurtherPredictions } from "../engine/deduction/further-predictions.ts";
import type { BenchPlan } from "../engine/planning/bench-plan.ts";
import type { Practical } from "../engine/practical.ts";

/** A kinetic gate that acts in this practical: what happens, or comes slowly, within the minutes of a test. */
export interface NamedGate {
  id: string;
  /** It is about what takes longer than a test; else about what happens although no constant says so. */
  slow: boolean;
  name: string;
  source: string;
}

export interface Walkthrough {
  practical: Practical;
  table: PredictionTable;
  /** The author's record in the table's terms. */
  record: TableRecord;
  conclusion: Conclusion;
  certificate: Certificate;
  purposes: Purpose[];
  plan: BenchPlan;
  /** The salt of each sample, mhchem. */
  answers: Record<string, string>;
  /** What the true salts show: by sample, by cell. */
  predicted: Record<string, Record<string, Prediction>>;
  gates: NamedGate[];
  /** Lines whose result would be false for some allowed salt. */
  interference: Interference[];
  /** Predictions of the true salts that stand on the border: by sample, by cell. */
  borderline: Record<string, Record<string, Borderline>>;
  /** Where the ions of the true salts are as a liquid is added, where that shows why a precipitate comes or goes. */
  curves: NamedCurve[];
  /** Standard tests on the salts that these tests may leave together; absent when there are none, or no such test would help. */
  further: FurtherPredictions | undefined;
}
