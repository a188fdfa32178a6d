import { useMemo } from "preact/hooks";
import * as say from "#words/conclude.ts";
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import type { Candidate } from "../../engine/deduction/candidates.ts";
import type { IonStanding, SampleConclusion } from "../../engine/deduction/conclusion.ts";
import { proofOfIon } from "../../engine/deduction/proof.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import type { IonNames } from "../names.ts";
import { evidence, testsOf } from "./evidence.ts";
import { MatrixRow } from "./MatrixRow.tsx";
import { wordProof } from "./proof-words.ts";
import { reasonFor } from "./reason.ts";
import { useAfterPaint } from "./use-after-paint.ts";

const KINDS = ["cation", "anion"] as const;

/** An ion that only another sample's contradiction keeps from being possible is not out. Reasons are read where nothing fits alone: they take time. */
const waitsFor = ({ salts }: SampleConclusion, ion: IonStanding) =>
  salts.length === 0 ? ion.reasons.find((reason) => reason.by === "another sample") : undefined;
const isOut = (of: SampleConclusion, ion: IonStanding) => ion.standing === "impossible" && !waitsFor(of, ion);

/** Ions that stay first, in the order of the paper. */
const order = (of: SampleConclusion, ions: IonStanding[]) => [
  ...ions.filter((ion) => !isOut(of, ion)),
  ...ions.filter((ion) => isOut(of, ion)),
];

/** Why an ion is out, or what proves it, in words: undefined where there is nothing to say. */
interface Why {
  ion: string;
  standing: IonStanding["standing"];
  words: string | undefined;
}

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
  const rows = useMemo(() => {
    const rowsOf = (kind: IonStanding["kind"]) => {
      const ions = of.ions.filter((ion) => ion.kind === kind);
      const all = ions.map((ion) => ion.ion);
      const found = evidence(table, record, of.sample, candidates, all);
      return order(of, ions).map((ion) => ({ ion, row: found[all.indexOf(ion.ion)] }));
    };
    return { cation: rowsOf("cation"), anion: rowsOf("anion") };
  }, [of]);
  const proofWords = ({ kind, ion }: IonStanding) => {
    const proof = unlessTooMuch(() => proofOfIon(table, record, place, `${kind}s`, ion));
    return proof && wordProof(proof, of.sample);
  };
  const about = { table, names, of, set: table.sets[table.samples[place].set], candidates, tests };
  // Marks and standings are painted first; what stood there as the reason for the same standing stays until the new one is worked out.
  const whys = useAfterPaint(of, () =>
    [...rows.cation, ...rows.anion].map(({ ion, row }): Why => {
      if (isOut(of, ion))
        return { ion: ion.ion, standing: ion.standing, words: unlessTooMuch(() => reasonFor(about, ion, row)) };
      return { ion: ion.ion, standing: ion.standing, words: ion.standing === "certain" ? proofWords(ion) : undefined };
    }),
  );
  const whyOf = ({ ion, standing }: IonStanding) =>
    whys?.find((why) => why.ion === ion && why.standing === standing)?.words;
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable with the keyboard */}
      <section class="scroll" aria-label={say.evidenceFor(of.sample)} tabIndex={0}>
        <table class="matrix" data-sample={of.sample}>
          <caption>{say.evidenceFor(of.sample)}</caption>
          <thead>
            <tr>
              <th scope="col">{say.ION}</th>
              {tests.map((test) => (
                <th scope="col" key={test}>
                  {table.cells[test].id}
                </th>
              ))}
              <th scope="col" class="why">
                {say.STANDING}
              </th>
            </tr>
          </thead>
          {KINDS.map((kind) => (
            <tbody key={kind}>
              {rows[kind].map(({ ion, row }) => (
                <MatrixRow
                  key={ion.ion}
                  ion={ion.ion}
                  name={names[ion.ion]}
                  standing={ion.standing}
                  waitsFor={waitsFor(of, ion)?.sample}
                  why={whyOf(ion)}
                  said={row.tests}
                  done={done}
                  ids={ids}
                />
              ))}
            </tbody>
          ))}
        </table>
      </section>
      {/* Filled by marks.ts when a mark is chosen. */}
      <p class="because" aria-live="polite" />
    </>
  );
}
