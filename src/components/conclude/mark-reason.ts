/** Why a test says of an ion what its mark says: what was seen, and what the ion would have shown there. */
import { MARK, NOT_DONE } from "#words/conclude.ts";
import * as say from "#words/mark-reason.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import type { Candidate } from "../../engine/deduction/candidates.ts";
import { plainly } from "../../engine/deduction/plainly.ts";
import { inWords } from "../record/in-words.ts";
import { evidence, holds, testsOf } from "./evidence.ts";
import { findingOf, type Recorded } from "./finding.ts";
import { sight } from "./reason.ts";

/** Salts named before they are only counted, and different sights told of one ion. */
const NAMED = 3;
const TOLD = 2;

/** One mark: the word it stands for and the sentence behind it; formulas in mhchem notation. */
export interface MarkReason {
  word: string;
  why: string;
}

/**
 * @param cell name of the test, one of those done on the sample
 * @throws RangeError when the table has no such sample, test or ion
 */
export function reasonOfMark(of: Recorded, sample: string, ion: string, cell: string): MarkReason {
  const { table, record } = of;
  const place = table.samples.findIndex(({ label }) => label === sample);
  const test = testsOf(table, sample).find((index) => table.cells[index].id === cell);
  const finding = findingOf(of);
  const standing = finding?.conclusion.samples[place]?.ions.find((one) => one.ion === ion);
  if (test === undefined || !finding || !standing)
    throw new RangeError(`There is no mark for ${ion} at ${cell} of ${sample}.`);
  const { conclusion, candidates } = finding;
  const { kind } = standing;
  const kin = conclusion.samples[place].ions.filter((one) => one.kind === kind).map((one) => one.ion);
  const all = candidates[place];
  const { tests, wouldShow } = evidence(table, record, sample, all, kin, [test])[kin.indexOf(ion)];
  const [[said], [others]] = [tests, wouldShow];
  const seen = record[sample]?.[cell];
  const word = seen === undefined ? NOT_DONE : MARK[said];
  const own = all.filter(({ salt }) => holds(table.salts[salt], ion));
  if (seen === undefined) return { word, why: say.notRecorded(cell, sample) };
  if (own.length === 0) return { word, why: say.noSalt(ion) };
  const { words, agrees } = table.cells[test];
  const set = table.sets[table.samples[place].set];
  const predicted = own.filter(({ row }) => set.accepts[row][test] !== 0);
  if (predicted.length === 0) return { word, why: say.notPredicted(ion) };
  const begin = say.seen(inWords(table.cells[test], seen));
  const clashing = ({ clashes }: Candidate) => clashes.includes(test);
  const plain = ({ row }: Candidate) => (plainly(set, row, test) & agrees[seen]) !== 0;
  switch (said) {
    case "nothing": {
      const some = all.some(clashing);
      const shown = all.filter(plain);
      const each = some
        ? kin.every((one) => shown.some(({ salt }) => holds(table.salts[salt], one)))
        : shown.length === all.length;
      return { word, why: begin + (some ? say.eachKindShows(kind, each) : say.allShow(each)) };
    }
    case "clashes": {
      const would = others.map((reading) => {
        const shows = predicted.find((one) => set.main[one.row][test] === reading) as Candidate;
        const as = others.length > 1 ? table.salts[shows.salt].formula : undefined;
        return { sight: sight(table, set, shows.row, test), as };
      });
      return { word, why: begin + say.wouldHaveSeen(ion, would.slice(0, TOLD), would.length > TOLD) };
    }
    case "border": {
      const just = predicted.filter((one) => !clashing(one));
      const usual = words[set.main[just[0].row][test]];
      return { word, why: begin + say.usualIs(ion, usual) };
    }
    case "fits": {
      const fit = own.filter(plain);
      const not = own.filter(clashing);
      const border = predicted.filter((one) => !plain(one) && !clashing(one));
      return { word, why: begin + fits(table, ion, { own, fit, border, not }) };
    }
  }
}

/** The salts of an ion, by whether they show what was seen; one that is not predicted is in none of the last three. */
interface SaltsOfIon {
  own: Candidate[];
  fit: Candidate[];
  border: Candidate[];
  not: Candidate[];
}

/**
 * "All 4 salts with Zn^2+ show that.", "ZnSO4 shows that, the other 3 salts with Zn^2+ do not.", "ZnSO4 shows that, 2 others with Zn^2+ may
 * at the border, one does not."
 */
function fits({ salts }: PredictionTable, ion: string, { own, fit, border, not }: SaltsOfIon): string {
  if (fit.length === own.length) {
    return own.length === 1 ? say.oneShows(ion, salts[own[0].salt].formula) : say.everyShows(ion, own.length);
  }
  const who =
    fit.length > NAMED
      ? say.someShow(fit.length, own.length, ion)
      : say.theseShow(fit.map(({ salt }) => salts[salt].formula));
  const rest = own.length - fit.length;
  const may = border.length > 0 ? [say.mayAtBorder(border.length, rest, ion)] : [];
  const none = not.length > 0 && (may.length > 0 || fit.length <= NAMED) ? [say.doNot(not.length, rest, ion)] : [];
  return `${[who, ...may, ...none].join(", ")}.`;
}
