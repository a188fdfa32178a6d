/** A changed record against the walkthrough's: which observations differ, what each sample was and is now, and why. */
import * as say from "#words/what-changed.ts";
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import type { Candidate } from "../../engine/deduction/candidates.ts";
import type { IonStanding, SampleConclusion } from "../../engine/deduction/conclusion.ts";
import { TooMuchWork } from "../../engine/deduction/work.ts";
import { inWords } from "../record/in-words.ts";
import { type EvidenceRow, evidence, holds, testsOf } from "./evidence.ts";
import { type Finding, findingOf, type Recorded } from "./finding.ts";
import { reasonFor, sight } from "./reason.ts";

/** Sentences; formulas in mhchem notation. */
export interface WhatChanged {
  observations: { cell: string; sample: string; was: string; now: string }[];
  /** Samples of which something else is concluded now. */
  samples: { sample: string; was: string; now: string; why: string[] }[];
  /** Samples whose own tests still fit, not decided because the record no longer agrees with itself or with the paper. */
  waiting: string[];
  /** Samples of which the same is concluded as before. */
  unchanged: string[];
}

/** Salts named before they are only counted, and ions told of one by one. */
const NAMED = 3;
const TOLD = 3;

/**
 * @param given the walkthrough's record, which fits what the paper says
 * @throws TooMuchWork where one of the two records leaves too much to follow
 */
export function whatChanged(of: Recorded, given: TableRecord): WhatChanged {
  const { table, record } = of;
  const before = { ...of, record: given };
  const words = (at: TableRecord, sample: string, cell: PredictionTable["cells"][number]) =>
    inWords(cell, at[sample]?.[cell.id]);
  const observations = table.samples.flatMap(({ label }) =>
    table.cells
      .filter(({ id, samples }) => samples.includes(label) && given[label]?.[id] !== record[label]?.[id])
      .map((cell) => ({
        cell: cell.id,
        sample: label,
        was: words(given, label, cell),
        now: words(record, label, cell),
      })),
  );
  const [old, now] = [findingOf(before), findingOf(of)];
  if (!old || !now) throw new TooMuchWork();
  const agrees = now.conclusion.assignments > 0;
  const as = table.samples.map((_, s) => {
    if (`${old.conclusion.samples[s].salts}` === `${now.conclusion.samples[s].salts}`) return "unchanged";
    return agrees || nearest(old, now, s).clashes.length > 0 ? "changed" : "waiting";
  });
  const those = (which: string) => table.samples.flatMap(({ label }, s) => (as[s] === which ? [label] : []));
  return {
    observations,
    samples: table.samples.flatMap(({ label }, s) => {
      if (as[s] !== "changed") return [];
      const why = agrees
        ? [...ruledOut(of, old, now, s), ...openAgain(table, old, now, s)]
        : atOdds(table, old, now, s);
      return [{ sample: label, was: saltsLeft(table, old, s), now: saltsLeft(table, now, s), why }];
    }),
    waiting: those("waiting"),
    unchanged: those("unchanged"),
  };
}

/** Of the salts the sample held or could hold before, the first of those that now clash with the fewest observations. */
function nearest(old: Finding, now: Finding, s: number): Candidate {
  const { salts } = old.conclusion.samples[s];
  return now.candidates[s]
    .filter(({ salt }) => salts.includes(salt))
    .toSorted((a, b) => a.clashes.length - b.clashes.length)[0];
}

/** In a record that fits nothing: what the sample's own salt would have shown, and what stands against the others. */
function atOdds(table: PredictionTable, old: Finding, now: Finding, s: number): string[] {
  const { salt, row, clashes } = nearest(old, now, s);
  const set = table.sets[table.samples[s].set];
  const { formula } = table.salts[salt];
  const shown = clashes
    .slice(0, TOLD)
    .map((cell) => say.wouldShow(table.cells[cell].id, formula, sight(table, set, row, cell)));
  if (now.candidates[s].every((one) => one.clashes.length > 0)) return [...shown, say.NO_OTHER_FITS];
  const reasons = now.conclusion.samples[s].ions.flatMap((ion) => ion.reasons);
  const said = reasons.find((reason) => reason.by === "not together");
  return [...shown, ...(said ? [say.othersFitAlone(said.statement)] : [])];
}

/** "ZnSO4", "ZnSO4 or ZnCl2", "one of 12 salts"; "no salt" where its own tests fit none. */
function saltsLeft({ salts: entries }: PredictionTable, { conclusion, candidates }: Finding, s: number): string {
  const { salts } = conclusion.samples[s];
  if (salts.length > NAMED) return say.oneOf(salts.length);
  if (salts.length > 0) return say.these(salts.map((salt) => entries[salt].formula));
  return candidates[s].some(({ clashes }) => clashes.length === 0) ? say.UNDECIDED : say.NO_SALT;
}

const isIn = ({ standing }: IonStanding) => standing !== "impossible";
const was = (of: SampleConclusion, ion: IonStanding) => of.ions.find((one) => one.ion === ion.ion) as IonStanding;

/** The ions that were in the sample, or could be, and are out now, those that were certain first. */
function ruledOut({ table, names, record }: Recorded, old: Finding, now: Finding, s: number): string[] {
  const [before, of] = [old.conclusion.samples[s], now.conclusion.samples[s]];
  const candidates = now.candidates[s];
  const gone = of.ions.filter((ion) => !isIn(ion) && isIn(was(before, ion)));
  const set = table.sets[table.samples[s].set];
  const about = { table, names, of, set, candidates, tests: testsOf(table, of.sample) };
  const why = (ion: IonStanding) => {
    const kin = of.ions.filter(({ kind }) => kind === ion.kind).map((one) => one.ion);
    const rows = evidence(table, record, of.sample, candidates, kin);
    return say.isOut(ion.ion, reasonFor(about, ion, rows[kin.indexOf(ion.ion)] as EvidenceRow));
  };
  const certain = gone.filter((ion) => was(before, ion).standing === "certain");
  const first = certain.length > 0 ? certain : gone;
  const more = first.length - TOLD;
  return [...first.slice(0, TOLD).map(why), ...(more > 0 ? [say.moreOut(more)] : [])];
}

/** The ions that were out and are open now, with the tests or the statement that kept them out. */
function openAgain(table: PredictionTable, old: Finding, now: Finding, s: number): string[] {
  const [before, of] = [old.conclusion.samples[s], now.conclusion.samples[s]];
  const open = of.ions.filter((ion) => isIn(ion) && !isIn(was(before, ion)));
  const kept = open.map((ion) => ({ ion: ion.ion, by: keptOut(table, old, of, was(before, ion), s) }));
  const keepers = new Map(kept.map(({ by }) => [JSON.stringify(by), by]));
  return [...keepers].map(([key, by]) => {
    const ions = kept.filter((one) => JSON.stringify(one.by) === key).map(({ ion }) => ion);
    return say.openAgain(ions.length > TOLD ? ions.length : ions, by);
  });
}

/** The tests that an ion's readiest salt clashed with before, else what the paper says. */
function keptOut(table: PredictionTable, old: Finding, of: SampleConclusion, ion: IonStanding, s: number): say.Keeper {
  const [{ clashes }] = old.candidates[s]
    .filter(({ salt }) => of.salts.includes(salt) && holds(table.salts[salt], ion.ion))
    .toSorted((a, b) => a.clashes.length - b.clashes.length);
  if (clashes.length > 0) return { tests: clashes.map((cell) => table.cells[cell].id) };
  const said = ion.reasons.find((reason) => reason.by === "paper");
  return said?.by === "paper" ? { statement: said.statement } : undefined;
}
