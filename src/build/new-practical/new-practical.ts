/** Writes a practical from a few answers: the engine fills in what every sample would show and what the tests leave open. */

import type { ContentFault } from "../../authoring/faults.ts";
import { recordInTable } from "../../engine/bench/record-in-table.ts";
import { tabulate } from "../../engine/bench/tabulate.ts";
import { STANDARD_TESTS } from "../../engine/constants/standard-tests.ts";
import { undecided } from "../../engine/deduction/deduce.ts";
import { ROMAN } from "../../engine/practical/cells.ts";
import { writtenTests } from "../../engine/practical/standard-parts.ts";
import type { Practical, PracticalRecord } from "../../engine/practical.ts";
import { phrase } from "../../engine/wording/phrase.ts";
import { answerOf } from "../answer.ts";
import { wrongAnswers } from "../check/answers.ts";
import { faultsIn } from "../check/make-fault.ts";
import { wrongSteps } from "../check/steps.ts";
import { checkFile } from "../check-file.ts";
import { readPracticalFile } from "../practical-files.ts";
import { predictor } from "../predictor.ts";
import { authorObservation } from "./author-observation.ts";
import type { Wanted } from "./wanted.ts";
import { writePractical } from "./write-practical.ts";

/**
 * @param path where the file will lie, for its own check
 * @returns the text of a file that passes the check, or all that stands against it
 * @throws TooManyReadings, NoEquilibrium where the engine cannot tell the tests apart or carry them out
 */
export function newPractical(wanted: Wanted, path: string): { text: string } | { faults: ContentFault[] } {
  const data = dataOf(wanted);
  const read = readPracticalFile(path, writePractical(data));
  if ("faults" in read) return read;
  const { practical, source } = read;
  const fault = faultsIn(source);
  const early = [...wrongSteps(practical, fault), ...wrongAnswers(practical, predictor.solve, fault)];
  if (early.length > 0) return { faults: early };
  const { record, open, unsafe } = predicted(practical);
  if (unsafe.length > 0) {
    return {
      faults: unsafe.map(({ sample, cell }) =>
        fault(["samples"], {
          what: `sample ${sample}: not safe in test ${cell}`,
          found: "a salt that nobody gives out for this test",
          advice: "take another salt, or leave this test out",
        }),
      ),
    };
  }
  const text = writePractical({ ...data, record, ...(Object.keys(open).length > 0 && { undecided: open }) });
  const left = checkFile(path, text, false);
  return left.length > 0 ? { faults: left } : { text };
}

function dataOf({ samples, given, concentration, tests, cations, anions, ...rest }: Wanted): Record<string, unknown> {
  const from = given === "solid" ? "solid" : "solution";
  return {
    ...rest,
    samples: samples.map(({ label, salt }) => ({ label, given, ...(given !== "solid" && { concentration }), salt })),
    paper: { cations, anions },
    parts: tests.map((id, index) => {
      const test = STANDARD_TESTS.find((one) => one.id === id);
      return {
        label: String.fromCharCode("a".charCodeAt(0) + index),
        title: test?.title ?? id,
        ...(given === "both" && { from }),
        tests: (test ? writtenTests(test, from) : []).map((steps, n, all) => ({
          ...(all.length > 1 && { label: ROMAN[n] }),
          steps: steps.map((step) => ({ ...step })),
        })),
      };
    }),
    record: {},
  };
}

/** What each sample shows, in the author's words; what the tests leave open; where a salt is not given out. */
function predicted(practical: Practical) {
  const { table } = tabulate(practical, predictor, phrase);
  const unsafe: { sample: string; cell: string }[] = [];
  const seen = Object.fromEntries(
    practical.samples.map((sample) => {
      const answer = answerOf(table, sample);
      const salt = answer ? table.salts.indexOf(answer) : -1;
      const set = table.sets[table.samples.find(({ label }) => label === sample.label)?.set ?? 0];
      const main = set.main[set.salts.indexOf(salt)] ?? [];
      const row = table.cells.flatMap((cell, c) => {
        if (!cell.samples.includes(sample.label) || (main[c] ?? -1) < 0) return [];
        if (cell.unsafeOn?.includes(salt)) unsafe.push({ sample: sample.label, cell: cell.id });
        return [[cell.id, cell.readings[main[c]]] as const];
      });
      return [sample.label, Object.fromEntries(row)] as const;
    }),
  );
  const left = undecided(table, recordInTable(table, seen, phrase));
  const open = Object.fromEntries(
    practical.samples.flatMap((sample) => {
      const answer = answerOf(table, sample)?.formula;
      const others = left[sample.label].map((salt) => table.salts[salt].formula).filter((one) => one !== answer);
      return others.length > 0 ? [[sample.label, others] as const] : [];
    }),
  );
  return { record: inShort(seen), open, unsafe };
}

/** A record as authors write it. */
const inShort = (record: PracticalRecord) =>
  Object.fromEntries(
    Object.entries(record).map(([sample, row]) => [
      sample,
      Object.fromEntries(Object.entries(row).map(([id, seen]) => [id, authorObservation(seen)])),
    ]),
  );
