/** From a record and what the paper says to a conclusion. Exact reasoning over all samples together; no scores. */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import { candidates } from "./candidates.ts";
import type { Agreement, Conclusion, Reason, Repetition } from "./conclusion.ts";
import { type Joint, joint } from "./joint.ts";
import { standings } from "./reasons.ts";
import { repeatsOf } from "./repeats.ts";
import { inWords, type Rule, rulesOf } from "./rules.ts";
import { fitting } from "./undecided.ts";
import { aPagesWork, type Work } from "./work.ts";

export { undecided } from "./undecided.ts";

/**
 * What follows from `record` (reading index, or something else, for each sample and cell; absent = not done) under the table's predictions and paper.
 * A salt stays possible for a sample only when it stands in some assignment of salts to all samples that agrees with every recorded
 * cell and every statement of the paper. Salts are indices into `table.salts`.
 * @throws RangeError when the record names a reading its cell does not have.
 * @throws TooMuchWork when the paper ties its samples together in too many ways to follow
 */
export function deduce(table: PredictionTable, record: TableRecord, work = aPagesWork()): Conclusion {
  const agreement = agreementOf(table, record, work);
  // What is too much work is told here, and not to whoever reads a reason.
  for (const { ions } of agreement.samples) for (const ion of ions) void ion.reasons;
  return { ...agreement, ...(agreement.assignments > 0 ? { repeats: [] } : repetitionOf(table, record, work)) };
}

/**
 * The first half of `deduce`: what agrees, and why the rest does not. A page shows it before it looks for what to repeat.
 * The reasons are looked for as they are read, which may be too much work where the conclusion itself is not.
 */
export function agreementOf(table: PredictionTable, record: TableRecord, work = aPagesWork()): Agreement {
  const rules = rulesOf(table);
  const all = table.samples.map((_, s) => candidates(table, record, s));
  const salts = all.map(fitting);
  const { assignments, left } = joint(table, salts, rules, work);
  const together = reasonsTogether(table, salts, rules, assignments > 0, work);
  return {
    assignments,
    samples: table.samples.map(({ label }, s) => ({
      sample: label,
      salts: left[s],
      ions: standings(table, s, all[s], left[s], (salt) => together(s, salt)),
    })),
  };
}

/** The second half, of a record that fits nothing: what to repeat, or that no repeat could help. */
export function repetitionOf(table: PredictionTable, record: TableRecord, work = aPagesWork()): Repetition {
  const rules = rulesOf(table);
  const all = table.samples.map((_, s) => candidates(table, record, s));
  const found = repeatsOf(table, record, all, rules, work);
  return found.repeats.length > 0 ? found : { repeats: [], contradiction: contradictionOf(table, rules, work) };
}

/**
 * The reason against a salt that its own observations allow: as few statements of the paper as exclude it.
 * @param some some assignment agrees with everything
 */
function reasonsTogether(table: PredictionTable, salts: number[][], rules: Rule[], some: boolean, work: Work) {
  const stuck = salts.findIndex((list) => list.length === 0);
  const known = new Map<string, Joint>();
  const clash = stuck < 0 && !some ? clashOf(table, salts, rules, work) : undefined;
  return (s: number, salt: number): Reason => {
    if (stuck >= 0) return { by: "another sample", sample: table.samples[stuck].label };
    if (clash) return clash;
    const excluded = (kept: Rule[]) => {
      const key = kept.map((rule) => rules.indexOf(rule)).join();
      const result = known.get(key) ?? joint(table, salts, kept, work);
      known.set(key, result);
      return !result.left[s].includes(salt);
    };
    return { by: "paper", statement: inWords(rules, excluded) };
  };
}

/** When every sample fits some salt but no choice of them obeys the paper: the statement in question and the samples that could mend it. */
function clashOf(table: PredictionTable, salts: number[][], rules: Rule[], work: Work): Reason {
  const impossible = (kept: Rule[]) => joint(table, salts, kept, work).assignments === 0;
  const free = table.samples.map(({ set }) => table.sets[set].salts);
  const mends = (s: number) =>
    joint(
      table,
      salts.map((own, at) => (at === s ? free[s] : own)),
      rules,
      work,
    ).assignments > 0;
  const samples = table.samples.flatMap(({ label }, s) => (mends(s) ? [label] : []));
  return { by: "not together", statement: inWords(rules, impossible), samples };
}

/** The statements that no assignment obeys even with a blank record, in words. */
function contradictionOf(table: PredictionTable, rules: Rule[], work: Work): string {
  const salts = table.samples.map(({ set }) => table.sets[set].salts);
  const none = salts.findIndex((list) => list.length === 0);
  if (none >= 0) return `no salt the paper allows can be ${table.samples[none].label}`;
  return inWords(rules, (kept) => joint(table, salts, kept, work).assignments === 0);
}
