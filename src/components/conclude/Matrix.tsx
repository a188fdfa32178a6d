import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import type { Candidate } from "../../engine/deduction/candidates.ts";
import type { IonStanding, SampleConclusion } from "../../engine/deduction/conclusion.ts";
import { proofOfIon } from "../../engine/deduction/proof.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import type { IonNames } from "../names.ts";
import { type EvidenceRow, evidence, testsOf } from "./evidence.ts";
import { MatrixRow } from "./MatrixRow.tsx";
import { wordProof } from "./proof-words.ts";
import { reasonFor } from "./reason.ts";

const KINDS = ["cation", "anion"] as const;

/** An ion that only another sample's contradiction keeps from being possible is not out. */
const waitsFor = (ion: IonStanding) => ion.reasons.find((reason) => reason.by === "another sample");
const isOut = (ion: IonStanding) => ion.standing === "impossible" && !waitsFor(ion);

/** Ions that stay first, in the order of the paper. */
const order = (ions: IonStanding[]) => [...ions.filter((ion) => !isOut(ion)), ...ions.filter(isOut)];

interface Props {
  table: PredictionTable;
  names: IonNames;
  record: TableRecord;
  of: SampleConclusion;
  /** Every salt the sample may hold, held against its own observations. */
  candidates: Candidate[];
}

/** The allowed ions of one sample against its tests, with the reason for each that is struck out. */
export function Matrix({ table, names, record, of, candidates }: Props) {
  const place = table.samples.findIndex(({ label }) => label === of.sample);
  const tests = testsOf(table, of.sample);
  const ids = tests.map((test) => table.cells[test].id);
  const done = ids.map((id) => record[of.sample]?.[id] !== undefined);
  const proofWords = ({ kind, ion }: IonStanding) => {
    const proof = unlessTooMuch(() => proofOfIon(table, record, place, `${kind}s`, ion));
    return proof ? wordProof(proof, of.sample) : "certain";
  };
  const about = { table, names, of, set: table.sets[table.samples[place].set], candidates, tests };
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable with the keyboard */}
      <section class="scroll" aria-label={`Evidence for ${of.sample}`} tabIndex={0}>
        <table class="matrix" data-sample={of.sample}>
          <caption>Evidence for {of.sample}</caption>
          <thead>
            <tr>
              <th scope="col">Ion</th>
              {tests.map((test) => (
                <th scope="col" key={test}>
                  {table.cells[test].id}
                </th>
              ))}
              <th scope="col" class="why">
                Standing
              </th>
            </tr>
          </thead>
          {KINDS.map((kind) => {
            const ions = of.ions.filter((ion) => ion.kind === kind);
            const rows = evidence(
              table,
              record,
              of.sample,
              candidates,
              ions.map((ion) => ion.ion),
            );
            return (
              <tbody key={kind}>
                {order(ions).map((ion) => {
                  const row = rows.find((one) => one.ion === ion.ion) as EvidenceRow;
                  return (
                    <MatrixRow
                      key={ion.ion}
                      ion={ion.ion}
                      name={names[ion.ion]}
                      standing={ion.standing}
                      waitsFor={waitsFor(ion)?.sample}
                      out={isOut(ion) ? reasonFor(about, ion, row) : undefined}
                      said={row.tests}
                      done={done}
                      ids={ids}
                      record={record}
                      proof={() => proofWords(ion)}
                    />
                  );
                })}
              </tbody>
            );
          })}
        </table>
      </section>
      {/* Filled by marks.ts when a mark is chosen. */}
      <p class="because" aria-live="polite" />
    </>
  );
}
