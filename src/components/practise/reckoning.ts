/** All marks of a practice, with what the reader's own record would have led to. */

import * as say from "#words/practise-result.ts";
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import { type OwnObservations, ownRecord } from "../../engine/deduction/own-record.ts";
import { ionsLeft } from "../../engine/deduction/reason-holds.ts";
import { undecided } from "../../engine/deduction/undecided.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import type { Observation } from "../../engine/practical.ts";
import type { CreditFor } from "../../engine/wording/credit.ts";
import { readWords } from "../../engine/wording/read-words.ts";
import { list } from "../sentence.ts";
import { type Answer, OPEN, type Session } from "./kept.ts";
import { leadsOf } from "./leads.ts";
import { markedLine, type OwnLine } from "./marked-line.ts";
import type { Practice, PracticeTest } from "./practice-table.ts";
import { tubeBefore } from "./tube-state.ts";
import { trueRecord, type Unknown } from "./unknowns.ts";

export interface MarkedPlace extends OwnLine {
  cell: string;
  sample: string;
  text: string;
}

/** A mark for an ion, or for what proves it. */
export interface ConclusionMark {
  sample: string;
  /** What is marked, as "cation". */
  what: string;
  answer: string;
  earned: boolean;
  reason: string;
}

export interface Reckoning {
  lines: MarkedPlace[];
  conclusions: ConclusionMark[];
  earned: number;
  of: number;
  /** What was lost, how often: the most first. */
  lost: { for: CreditFor | "conclusion" | "empty"; times: number }[];
  /** Sentences, one a sample: what the reader's record leads to; or one that it leaves too much open to follow. */
  leads: string[];
  /** The reader's record leads to the unknowns. */
  right: boolean;
  /** Where what was read in the record is none of what the tube may show. */
  misread: { cell: string; sample: string; text: string; model: string }[];
}

export function reckon(
  practice: Practice,
  tests: PracticeTest[],
  unknowns: Unknown[],
  session: Session,
  names: Record<string, string>,
): Reckoning {
  const { table } = practice;
  const lines = unknowns.flatMap((of) =>
    tests.flatMap(({ id }, c): MarkedPlace[] => {
      if (!of.seen[c]) return [];
      const text = session.lines[id]?.[of.sample] ?? "";
      return [{ cell: id, sample: of.sample, text, ...markedLine(practice, tests, of, c, text) }];
    }),
  );
  const truth = trueRecord(table, unknowns);
  const conclusions = unknowns.flatMap((of) =>
    (["cations", "anions"] as const).flatMap((kind) =>
      conclusionMarks(table, truth, of, kind, session.answers[of.sample]?.[kind] ?? { ions: [], because: [] }),
    ),
  );
  const own: OwnObservations = Object.fromEntries(
    unknowns.map((of) => [of.sample, observationsOf(practice, tests, of, session)]),
  );
  const mine = ownRecord(table, own);
  const left = unlessTooMuch(() => undecided(mine.table, mine.record));
  const marks = [...lines.flatMap((line) => line.marks), ...conclusions];
  return {
    lines,
    conclusions,
    earned: marks.filter(({ earned }) => earned).length,
    of: marks.length,
    lost: lostOf(lines, conclusions),
    leads: left ? leadsOf(mine.table, mine.record, left, names) : [say.TOO_MUCH],
    right:
      left !== undefined &&
      unknowns.every(({ sample, salt }) => left[sample]?.length === 1 && left[sample][0] === salt),
    misread: unknowns.flatMap((of) =>
      tests.flatMap(({ id }, c) => {
        const seen = of.seen[c];
        const written = mine.record[of.sample]?.[id];
        if (!seen || written === undefined) return [];
        const { salts, accepts } = table.sets[of.set];
        const mask = accepts[salts.indexOf(of.salt)][c];
        if (mine.table.cells[c].agrees[written] & mask) return [];
        const text = session.lines[id]?.[of.sample] ?? "";
        return [{ cell: id, sample: of.sample, text, model: table.cells[c].words[seen.reading] }];
      }),
    ),
  };
}

function observationsOf(
  practice: Practice,
  tests: PracticeTest[],
  of: Unknown,
  { lines }: Session,
): Record<string, Observation> {
  return Object.fromEntries(
    tests.flatMap(({ id, asked }, c) => {
      const text = lines[id]?.[of.sample]?.trim();
      if (!text || !of.seen[c]) return [];
      const { seen } = readWords(text, { ...asked, solid: tubeBefore(practice, tests, of, c).solid !== undefined });
      return seen ? [[id, seen]] : [];
    }),
  );
}

/** A mark for the ions of one kind, and one for the tests that prove them; that one falls away where it takes too much to tell. */
function conclusionMarks(
  table: PredictionTable,
  truth: TableRecord,
  { sample, salt }: Unknown,
  kind: "cations" | "anions",
  { ions, because }: Answer,
): ConclusionMark[] {
  const right = table.salts[salt][kind];
  const all = Object.keys(truth[sample]);
  const leftBy = (cells: readonly string[]) => ionsLeft(table, truth, sample, kind, cells);
  const left = unlessTooMuch(() => leftBy(all));
  const answer = ions.filter((ion) => ion !== "");
  const shown = answer.length === 0 ? say.NOTHING : say.both(answer.map((ion) => (ion === OPEN ? say.LEFT_OPEN : ion)));
  const mark = (earned: boolean, reason: string) => ({ sample, what: say.ION[kind], answer: shown, earned, reason });
  if (left && left.length > 1) {
    return [answer.includes(OPEN) ? mark(true, say.testsLeave(left)) : mark(false, say.notProved(left, right))];
  }
  const named = answer.toSorted().join() === right.toSorted().join();
  const ion = mark(named, named ? say.RIGHT : say.itWas(right));
  const proved = left && unlessTooMuch(() => proofMark(right, because, leftBy));
  if (!proved) return [ion];
  const proof = { what: say.proofOf(kind), answer: because.length > 0 ? list(inOrder(all, because)) : say.NOTHING };
  return [ion, { ...ion, ...proof, ...(named ? proved : { earned: false, reason: say.ONLY_WITH_ION }) }];
}

/** @param leftBy the ions that these tests leave of the kind */
function proofMark(
  right: readonly string[],
  because: readonly string[],
  leftBy: (cells: readonly string[]) => string[],
): Pick<ConclusionMark, "earned" | "reason"> {
  if (because.length === 0) {
    return leftBy([]).length === 1
      ? { earned: true, reason: say.NOTHING_ELSE_LEFT }
      : { earned: false, reason: say.NO_TEST };
  }
  const also = leftBy(because);
  if (also.length > 1) {
    const others = also.filter((one) => one !== right.join(" and "));
    return { earned: false, reason: say.couldAlsoBe(others.slice(0, 3), others.length - 3) };
  }
  const idle = idleOf(because, (cells) => leftBy(cells).length === 1);
  return idle.length > 1 ? { earned: false, reason: say.idle(idle) } : { earned: true, reason: say.PROVED };
}

const inOrder = (all: string[], some: string[]) => all.filter((cell) => some.includes(cell));

/** Tests that can be left out one after the other while the rest still proves it. */
function idleOf(cells: readonly string[], proves: (cells: string[]) => boolean): string[] {
  let kept = [...cells];
  const idle: string[] = [];
  for (const cell of cells) {
    const rest = kept.filter((one) => one !== cell);
    if (!proves(rest)) continue;
    kept = rest;
    idle.push(cell);
  }
  return idle;
}

function lostOf(lines: readonly MarkedPlace[], conclusions: readonly ConclusionMark[]): Reckoning["lost"] {
  const times = new Map<Reckoning["lost"][number]["for"], number>();
  const add = (what: Reckoning["lost"][number]["for"]) => times.set(what, (times.get(what) ?? 0) + 1);
  for (const { text, marks } of lines) {
    if (text.trim() === "") add("empty");
    else for (const mark of marks) if (!mark.earned) add(mark.for);
  }
  for (const { earned } of conclusions) if (!earned) add("conclusion");
  return [...times].map(([what, count]) => ({ for: what, times: count })).sort((a, b) => b.times - a.times);
}
