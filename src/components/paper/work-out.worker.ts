/** What the page shows of a paper, worked out in the worker: first what every salt shows, then what stands near a limit and what misleads. */

import * as say from "#words/paper-desk.ts";
import { cannotBe } from "../../engine/bench/allowed-salts.ts";
import { asSample } from "../../engine/bench/as-sample.ts";
import { contentsOf } from "../../engine/bench/contents.ts";
import { impossibleSteps } from "../../engine/bench/impossible-steps.ts";
import { type Interference, interference } from "../../engine/bench/interference.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import type { Predictor } from "../../engine/bench/predictor.ts";
import { recordInTable } from "../../engine/bench/record-in-table.ts";
import { formKey, TooManyReadings, tabulate } from "../../engine/bench/tabulate.ts";
import { NoEquilibrium } from "../../engine/bench/tube.ts";
import { DEFAULT_TUBES } from "../../engine/constants/glassware.ts";
import { purposes } from "../../engine/deduction/purposes.ts";
import { ionName } from "../../engine/formula/ion-name.ts";
import { planUsualBench } from "../../engine/planning/usual-bench.ts";
import type { PracticalFault } from "../../engine/practical/faults.ts";
import { cellsOf, type Paper, type Step } from "../../engine/practical.ts";
import { askedOf } from "../../engine/wording/asked-of.ts";
import { phrase } from "../../engine/wording/phrase.ts";
import { capital } from "../capital.ts";
import { wordInterference } from "../carry-out/interference-words.ts";
import { cautionsFor } from "../carry-out/part-cautions.ts";
import { benchOf, gasName, wordSteps, wordTest } from "../carry-out/step-words.ts";
import { link } from "../link.ts";
import { drawnRack } from "../prepare/rack.ts";
import { impossiblePairs } from "../read/impossible-pairs.ts";
import { wordGiven, wordPaper } from "../read/paper-words.ts";
import { purposeWords, sightsOf } from "../read/purpose-words.ts";
import { islandTable } from "../record/island-table.ts";
import { readAsFar } from "./as-far.ts";
import type { CautionEntry, PaperWork, Worked, WorkedPart } from "./paper-work.types.ts";

/** More salts than this take too long on a phone, and hold more sights than a record has room for. */
const MOST_SALTS = 400;

/** Steps that read well and cannot be done, as faults of the paper. */
const impossible = (paper: Paper): PracticalFault[] =>
  impossibleSteps(paper).map(({ path, found, advice }) => ({ path, message: say.impossible(found, advice) }));

/** Reads a paper as far as it can be. */
export const readWritten = (written: unknown) => readAsFar(written, impossible);

/** What every salt plainly shows, without what stands near a limit. */
export const plainTable = (
  paper: Paper,
  predictor: Predictor,
  isWanted?: (salt: { formula: string }) => boolean,
): PredictionTable => tabulate(paper, { ...predictor, border: () => new Map() }, phrase, isWanted).table;

/** Tells how far it is; false when the work is not wanted any more. */
export type Pause = (done: number, of: number) => Promise<boolean>;

/**
 * Works a written paper out, in two stages.
 * @param tell gets each stage as it is ready
 * @param pause called often, so that the worker can hear of a newer paper
 */
export async function workOut(
  written: unknown,
  cautions: readonly CautionEntry[],
  predictor: Predictor,
  tell: (worked: Worked) => void,
  pause: Pause,
): Promise<void> {
  const { faults, paper, lines } = readWritten(written);
  if (!paper) return tell({ faults });
  const salts = new Set(paper.samples.map(({ holds }) => contentsOf(paper.paper, holds).length));
  const many = Math.max(...salts);
  if (many > MOST_SALTS) {
    return tell({ faults, refused: say.tooManySalts(many, MOST_SALTS) });
  }
  const of = { written, paper, lines, faults, cautions };
  try {
    if (!(await ahead(paper, predictor, pause, (salt, form, parts) => predictor.predict(asSample(salt, form), parts))))
      return;
    tell({ faults, work: paperWork(of, plainTable(paper, predictor), undefined) });
    if (!(await ahead(paper, predictor, pause, (salt, form, parts) => predictor.border(salt, form, parts)))) return;
    const misleading = interference(paper, predictor.solve);
    tell({ faults, work: paperWork(of, tabulate(paper, predictor, phrase).table, misleading) });
  } catch (error) {
    tell({ faults, refused: refusal(error) });
  }
}

/** Why an engine gave up, as a sentence; what is no such reason is thrown on. */
function refusal(error: unknown): string {
  if (error instanceof TooManyReadings) return say.tooManySights(error.cell);
  if (error instanceof NoEquilibrium || error instanceof RangeError) return say.noEquilibrium(error.message);
  throw error;
}

/** Works ahead salt by salt, so that there is a pause between any two: the table is then put together from what is remembered. */
async function ahead(
  { samples, paper, parts }: Paper,
  { solve }: Predictor,
  pause: Pause,
  work: (salt: ReturnType<typeof contentsOf>[number], form: Paper["samples"][number], parts: Paper["parts"]) => unknown,
): Promise<boolean> {
  const forms = [...new Map(samples.map((sample) => [formKey(sample), sample])).entries()];
  const jobs = forms.flatMap(([key, form]) => {
    const letters = samples.filter((one) => formKey(one) === key).map(({ label }) => label);
    const mine = parts.filter((part) => letters.some((letter) => part.samples?.includes(letter) ?? true));
    return contentsOf(paper, form.holds).map((salt) => ({ salt, form, mine }));
  });
  for (const [index, { salt, form, mine }] of jobs.entries()) {
    if (!(await pause(index, jobs.length))) return false;
    if (cannotBe(salt, form, solve) === undefined) work(salt, form, mine);
  }
  return true;
}

interface Of {
  written: unknown;
  paper: Paper;
  lines: [number, number][];
  faults: PracticalFault[];
  cautions: readonly CautionEntry[];
}

function paperWork(
  { written, paper, lines, cautions }: Of,
  table: PredictionTable,
  misleading: Interference[] | undefined,
): PaperWork {
  const record = recordInTable(table, paper.record, phrase);
  const plan = planUsualBench(paper, table, DEFAULT_TUBES);
  const cells = cellsOf(paper.parts);
  const tests = cells.map(({ test }) => wordTest(test, plan));
  return {
    table: islandTable(table),
    tests,
    asked: cells.map(({ test, index }) => askedOf(test.steps, index > 0)),
    lines,
    names: Object.fromEntries([...paper.paper.cations, ...paper.paper.anions].map((ion) => [ion, ionName(ion)])),
    given: paper.samples.map(wordGiven),
    says: wordPaper(table, paper.samples),
    pairs: impossiblePairs(table),
    purposes: purposes(table).map((purpose, index) => ({
      id: purpose.cell,
      test: capital(tests[index]),
      tells: purposeWords(purpose),
      byIon: purpose.tellsApart.length === 1,
      sights: purpose.groups.length > 1 ? sightsOf(purpose, table.cells[index].words, table) : [],
      gases: table.cells[index].comesOff.map(({ gas }) => gasName(gas)),
    })),
    plan,
    rack: drawnRack(plan),
    parts: partsOf(paper, plan, cautions, misleading ?? []),
    seen: seenIn(written, record),
    whole: misleading !== undefined,
  };
}

type Plan = ReturnType<typeof planUsualBench>;

function partsOf(paper: Paper, plan: Plan, all: readonly CautionEntry[], misleading: Interference[]): WorkedPart[] {
  const cells = cellsOf(paper.parts);
  /** Bubbles may come, and not only from warming. */
  const fizzes = (id: string, steps: Step[]) =>
    plan.gases.some(({ cell }) => cell === id) && !steps.some(({ do: verb }) => verb === "warm" || verb === "boil");
  const warnings = misleading.filter(
    (one, index) => misleading.findIndex(({ kind, cell }) => kind === one.kind && cell[0] === one.cell[0]) === index,
  );
  /** Said in full beside the first part that needs it. */
  const told = new Map<string, string>();
  const says = (id: string, summary: string, part: string) => {
    const first = told.get(id);
    if (first !== undefined) return say.asBeside(first);
    told.set(id, part);
    return summary;
  };
  return paper.parts.map((part) => {
    const lines = cells.filter((cell) => cell.part === part);
    const gases = plan.gases.filter(({ cell }) => lines.some(({ id }) => id === cell)).map(({ gas }) => gas);
    const bench = benchOf(part, paper.samples, plan);
    return {
      label: part.label,
      title: part.title,
      only: part.samples && part.samples.length < paper.samples.length ? part.samples : [],
      askFirst: plan.askFirst.flatMap((one) => (one.part === part.label ? [capital(one.says)] : [])),
      cautions: cautionsFor(part, gases, [...paper.paper.cations, ...paper.paper.anions], all).map(({ id, data }) => ({
        title: data.title,
        says: says(id, data.summary, part.label),
        href: link(`/cautions/${id}/`),
      })),
      tests: lines.map(({ id, test }) => ({
        id,
        ...(test.says && { says: test.says }),
        steps: wordSteps(test.steps, bench, fizzes(id, test.steps)),
        warnings: warnings.filter(({ cell }) => cell === id).map(wordInterference),
      })),
    };
  });
}

/** Each recorded observation as it was written, with its reading in the table. */
function seenIn(written: unknown, record: Record<string, Record<string, number>>): PaperWork["seen"] {
  const stated = (written as { record?: Record<string, Record<string, unknown>> }).record ?? {};
  return Object.fromEntries(
    Object.entries(record).map(([letter, row]) => [
      letter,
      Object.fromEntries(
        Object.entries(row).map(([id, reading]) => [id, { of: JSON.stringify(stated[letter]?.[id]), reading }]),
      ),
    ]),
  );
}
