/**
 * The questions of a practical: for each sample, given its record, which cation and which anion does it hold? Asked only where the record
 * and what the paper says prove the answer, and with every observation shown that the proof needs.
 */
import { capital } from "../../components/capital.ts";
import { wordTest } from "../../components/carry-out/step-words.ts";
import { evidence, testsOf } from "../../components/conclude/evidence.ts";
import { wordProof } from "../../components/conclude/proof-words.ts";
import { reasonFor } from "../../components/conclude/reason.ts";
import { withName } from "../../components/names.ts";
import { wordGiven, wordPaper } from "../../components/read/paper-words.ts";
import { plain } from "../../components/sentence.ts";
import { recordInTable } from "../../engine/bench/record-in-table.ts";
import { tabulate } from "../../engine/bench/tabulate.ts";
import { candidates } from "../../engine/deduction/candidates.ts";
import type { SampleConclusion } from "../../engine/deduction/conclusion.ts";
import { type Proof, proofOfIon } from "../../engine/deduction/proof.ts";
import { ionName } from "../../engine/formula/ion-name.ts";
import {
  deduce,
  type Practical,
  type PredictionTable,
  phrase,
  planUsualBench,
  type TableRecord,
} from "../../engine/index.ts";
import { cellsOf } from "../../engine/practical.ts";
import { answerOf } from "../answer.ts";
import { department } from "../department/department.ts";
import { predictor } from "../predictor.ts";
import { FEWEST_CHOICES } from "./assessment.ts";
import type { Question } from "./cartridge.types.ts";
import { ionIdentifier } from "./identifiers.ts";
import { type Line, wordStem } from "./stem.ts";

const KINDS = ["cation", "anion"] as const;
type Kind = (typeof KINDS)[number];

export interface Questions {
  questions: Question[];
  /** What is not asked, each with the reason, in sentences. */
  leftOut: string[];
}

/** A practical with all that its questions are made from. */
interface Worked {
  practical: Practical;
  table: PredictionTable;
  record: TableRecord;
  /** What is done at each line of the record. */
  done: ReadonlyMap<string, string>;
}

/**
 * @param name begins each question's identifier
 * @throws what the engine throws for a procedure it cannot carry out; the content check words that
 */
export function questionsOf(name: string, practical: Practical): Questions {
  const { table } = tabulate(practical, predictor, phrase);
  const record = recordInTable(table, practical.record, phrase);
  const plan = planUsualBench(practical, table, department().tubes);
  const done = new Map(cellsOf(practical.parts).map(({ id, test }) => [id, wordTest(test, plan)]));
  const worked = { practical, table, record, done };
  const asked = deduce(table, record).samples.flatMap((of) => KINDS.map((kind) => ask(name, worked, of, kind)));
  return {
    questions: asked.filter((one) => typeof one !== "string"),
    leftOut: asked.filter((one) => typeof one === "string"),
  };
}

/** The question, or why there is none. */
function ask(name: string, worked: Worked, of: SampleConclusion, kind: Kind): Question | string {
  const { practical, table, record } = worked;
  const place = table.samples.findIndex(({ label }) => label === of.sample);
  const sample = practical.samples[place];
  const ions = of.ions.filter((one) => one.kind === kind);
  if (ions.length < FEWEST_CHOICES) {
    return `Sample ${of.sample}: which ${kind} is not asked; the paper offers ${ions.length}, and a choice needs ${FEWEST_CHOICES}.`;
  }
  const answer = [...new Set(answerOf(table, sample)?.[`${kind}s`])];
  const proofs = answer.flatMap((ion) => {
    const proof = proofOfIon(table, record, place, `${kind}s`, ion);
    return proof ? [{ ion, proof }] : [];
  });
  if (answer.length === 0 || proofs.length < answer.length || answer.length < (sample.holds?.[`${kind}s`] ?? 1)) {
    return `Sample ${of.sample}: which ${kind} is not asked; the tests leave it open.`;
  }
  const names = Object.fromEntries(of.ions.map(({ ion }) => [ion, ionName(ion)]));
  const named = (ion: string) => plain(withName(ion, names));
  const all = candidates(table, record, place);
  const rows = evidence(
    table,
    record,
    of.sample,
    all,
    ions.map(({ ion }) => ion),
  );
  const set = table.sets[table.samples[place].set];
  const about = { table, names, of, set, candidates: all, tests: testsOf(table, of.sample) };
  return {
    identifier: `${name}-${of.sample}-${kind}`,
    title: `Sample ${of.sample}: ${kind}`,
    stem: wordStem({
      sample: of.sample,
      samples: practical.samples.map(wordGiven),
      paper: wordPaper(table, practical.samples),
      record: linesOf(worked, of.sample),
      others: othersIn(
        worked,
        of.sample,
        proofs.map(({ proof }) => proof),
      ),
      asked: `Which ${answer.length > 1 ? `two ${kind}s` : kind} does sample ${of.sample} hold?`,
    }),
    choices: ions.map((ion, index) => ({
      identifier: ionIdentifier(ion.ion),
      words: named(ion.ion),
      ...(!answer.includes(ion.ion) && {
        says: `${capital(named(ion.ion))} is out: ${plain(reasonFor(about, ion, rows[index]))}.`,
      }),
    })),
    correct: answer.map(ionIdentifier),
    right: proofs.map(({ ion, proof }) => `${capital(named(ion))} is ${plain(wordProof(proof, of.sample))}.`).join(" "),
  };
}

/** A sample's whole record. */
function linesOf({ table, record, done }: Worked, sample: string): Line[] {
  return table.cells.flatMap(({ id, words }) => {
    const seen = record[sample]?.[id];
    return seen === undefined ? [] : [{ sample, cell: id, done: done.get(id) ?? "", seen: words[seen] }];
  });
}

/** What the proofs need of other samples, in the order of the paper. */
function othersIn(worked: Worked, sample: string, proofs: readonly Proof[]): Line[] {
  const needed = proofs.flatMap(({ places }) => places).filter((place) => place.sample !== sample);
  return worked.table.samples
    .flatMap(({ label }) => linesOf(worked, label))
    .filter((line) => needed.some((place) => place.sample === line.sample && place.cell === line.cell));
}
