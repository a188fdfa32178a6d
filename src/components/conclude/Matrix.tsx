import { useMemo } from "preact/hooks";
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import type { Candidate } from "../../engine/deduction/candidates.ts";
import type { IonStanding, SampleConclusion } from "../../engine/deduction/conclusion.ts";
import { proofOfIon } from "../../engine/deduction/proof.ts";
import type { IonNames } from "../names.ts";
import { Words } from "../Words.tsx";
import { AfterPaint } from "./AfterPaint.tsx";
import { type Evidence, type EvidenceRow, evidence, testsOf } from "./evidence.ts";
import { markWord } from "./mark-reason.ts";
import { wordProof } from "./proof-words.ts";
import { reasonFor } from "./reason.ts";

const CLASS: Record<Evidence, string | undefined> = { fits: undefined, border: "b", clashes: "n", nothing: "o" };
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
    const proof = proofOfIon(table, record, place, `${kind}s`, ion);
    return proof ? wordProof(proof, of.sample) : "certain";
  };
  const about = { table, names, of, set: table.sets[table.samples[place].set], candidates, tests };
  return (
    <div class="evidence">
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
                  const waits = waitsFor(ion);
                  const out = isOut(ion);
                  return (
                    <tr key={ion.ion} data-ion={ion.ion} class={out ? "out" : undefined}>
                      <th scope="row">
                        <Words of={ion.ion} /> <span class="name">{names[ion.ion]}</span>
                      </th>
                      <Marks said={row.tests} done={done} ids={ids} />
                      <td class="why">
                        {ion.standing === "possible" && <b class="fit">still possible</b>}
                        {ion.standing === "certain" && (
                          <b class="fit">
                            <AfterPaint on={record} of={() => <Words of={proofWords(ion)} />} first="certain" />
                          </b>
                        )}
                        {waits && <>waits for {waits.sample}</>}
                        {out && (
                          <>
                            <b class="clash">out:</b> <Words of={reasonFor(about, ion, row)} />
                          </>
                        )}
                      </td>
                    </tr>
                  );
                })}
              </tbody>
            );
          })}
        </table>
      </section>
      {/* Filled by marks.ts when a mark is chosen. */}
      <p class="because" aria-live="polite" />
    </div>
  );
}

/** What each test says of one ion. Most stay as they were when the record changes: the same elements again are not looked through. */
function Marks({ said, done, ids }: { said: Evidence[]; done: boolean[]; ids: string[] }) {
  return useMemo(
    () => (
      <>
        {ids.map((id, test) => (
          <td key={id} class={CLASS[said[test]]} data-head={id}>
            <span class="vh">{markWord(said[test], done[test])}</span>
          </td>
        ))}
      </>
    ),
    [said.join(), done.join(), ids.join()],
  );
}
