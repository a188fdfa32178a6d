/** Why an ion is ruled out, in words: by the salt it would make with the partner the sample really has. */
import * as say from "#words/conclude.ts";
import type { PredictionSet, PredictionTable } from "../../engine/bench/prediction-table.ts";
import type { Candidate } from "../../engine/deduction/candidates.ts";
import type { IonStanding, Reason, SampleConclusion } from "../../engine/deduction/conclusion.ts";
import type { IonNames } from "../names.ts";
import type { EvidenceRow } from "./evidence.ts";

/** So many salts of an ion are told one by one. */
const TOLD = 2;

type Observation = PredictionTable["cells"][number]["readings"][number];

/** How plain a sight is that the record lacks: 0 something appears, 1 a solid stays or goes, 2 nothing is seen. */
function plainness({ precipitate, gas, effervescence, flame, indicator, fate }: Observation): number {
  if (precipitate || gas || effervescence || flame || indicator) return 0;
  return fate ? 1 : 2;
}

export interface Case {
  table: PredictionTable;
  names: IonNames;
  of: SampleConclusion;
  /** The predictions for the sample, and every salt it may hold against its own observations. */
  set: PredictionSet;
  candidates: Candidate[];
  /** The test at each place of an evidence row, as its place in the table's cells. */
  tests: readonly number[];
}

/**
 * Prefers the salts of the ion with a partner that is certain in the sample, then with one that is possible, then all of them.
 *
 * @param row the ion's evidence
 * @example "at a(ii) it would show: precipitate dissolves, giving a colourless solution (99 % of the Al(OH)3 dissolves)"
 */
export function reasonFor(of: Case, ion: IonStanding, row: EvidenceRow): string {
  const reasons = withLikelyPartner(of, ion);
  // Where all salts of the ion would show the same, that one sight says it all.
  const shared = of.candidates.find(({ salt, clashes }) => reasons.some(isOf(salt)) && clashes.some(alike(of, row)));
  if (shared) return observed(of, shared.salt, row);
  const clauses = [...new Set(reasons.map((reason) => clause(of, reason, row)))];
  if (clauses.length <= TOLD) return clauses.join("; ");
  const closest = reasons.find(isOf(row.closest));
  return say.othersElsewhere(closest ? clause(of, closest, row) : clauses[0]);
}

const isOf = (salt: number | undefined) => (reason: Reason) => reason.by === "observation" && reason.salt === salt;

/** All salts of the ion would show the same at this cell, and none what is recorded. */
const alike =
  ({ tests }: Case, row: EvidenceRow) =>
  (cell: number) =>
    row.wouldShow[tests.indexOf(cell)]?.length === 1;

function withLikelyPartner({ table, of }: Case, ion: IonStanding): Reason[] {
  const other = ion.kind === "cation" ? "anion" : "cation";
  const partners = (reason: Reason) => ("salt" in reason ? (table.salts[reason.salt]?.[`${other}s`] ?? []) : []);
  // A salt of the ion that fits its own tests is excluded by the others alone: that is the reason, whatever its other salts would show.
  const together = ion.reasons.filter(({ by }) => by === "paper" || by === "not together" || by === "another sample");
  for (const standing of ["certain", "possible"]) {
    const ions = of.ions.filter((one) => one.kind === other && one.standing === standing).map((one) => one.ion);
    const found = ion.reasons.filter((reason) => partners(reason).some((partner) => ions.includes(partner)));
    if (found.length > 0 && (standing === "certain" || together.length === 0)) return found;
    if (ions.length > 0 && together.length > 0) return together;
  }
  return together.length > 0 ? together : ion.reasons;
}

/** One reason as a clause; formulas in mhchem notation. */
function clause(of: Case, reason: Reason, row: EvidenceRow): string {
  switch (reason.by) {
    case "paper":
      return say.notWithPaper(reason.statement);
    case "not together":
      return say.notTogether(reason.statement);
    case "another sample":
      return say.waitsUntilRight(reason.sample);
    case "cannot be":
      return cannotBe(of, reason.salt, reason.reason);
    case "observation":
      return observed(of, reason.salt, row);
  }
}

/** "lead(II) chloride does not dissolve to 0.1 mol/dm3"; a reason that does not name the salt gets its formula. */
function cannotBe({ table, names }: Case, salt: number, reason: string): string {
  const entry = table.salts[salt];
  return !entry || entry.cations.some((cation) => reason.includes(names[cation]))
    ? reason
    : `${entry.formula}: ${reason}`;
}

/** The plainest of the tests at which the salt clashes: one at which all salts of the ion look alike if there is one, else the first of equals. */
function observed(of: Case, salt: number, row: EvidenceRow): string {
  const { table, set, candidates } = of;
  const candidate = candidates.find((one) => one.salt === salt) as Candidate;
  const common = candidate.clashes.filter(alike(of, row));
  const sights = (common.length > 0 ? common : candidate.clashes).map((cell) => {
    const reading = set.main[candidate.row][cell];
    return { cell, plain: plainness(table.cells[cell].readings[reading]) };
  });
  const [{ cell }] = sights.sort((a, b) => a.plain - b.plain || a.cell - b.cell);
  const as = common.length > 0 ? undefined : table.salts[salt].formula;
  return say.wouldShow(table.cells[cell].id, sight(table, set, candidate.row, cell), as);
}

/** What a salt (its row in the set) most likely shows at a cell, with the figure behind it. */
export function sight(table: PredictionTable, set: PredictionSet, row: number, cell: number): string {
  const { words, readings } = table.cells[cell];
  const reading = set.main[row][cell];
  const { precipitate, effervescence } = readings[reading];
  // An amount says how plainly it would be seen; of a solid that goes or a paper that turns the words say enough.
  const fact = precipitate || effervescence ? table.facts[set.facts[row][cell]] : undefined;
  return words[reading] + (fact ? ` (${fact})` : "");
}
