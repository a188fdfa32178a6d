/** One ion of the evidence: a mark for each test, and how it stands. */
import { useMemo } from "preact/hooks";
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import type { IonStanding } from "../../engine/deduction/conclusion.ts";
import { Words } from "../Words.tsx";
import { AfterPaint } from "./AfterPaint.tsx";
import type { Evidence } from "./evidence.ts";
import { markWord } from "./mark-reason.ts";

const CLASS: Record<Evidence, string | undefined> = { fits: undefined, border: "b", clashes: "n", nothing: "o" };

interface Props {
  ion: string;
  name: string;
  standing: IonStanding["standing"];
  /** The sample that must be put right before anything is said of this ion. */
  waitsFor: string | undefined;
  /** Why it is out; undefined when it is not. */
  out: string | undefined;
  /** What each test says, whether it was done, and its name. */
  said: Evidence[];
  done: boolean[];
  ids: string[];
  record: TableRecord;
  /** What proves an ion that is certain, in words: worked out after the rest is painted. */
  proof(): string;
}

/** Most rows stay as they were when the record changes: the same elements again are not looked through. */
export function MatrixRow({ ion, name, standing, waitsFor, out, said, done, ids, record, proof }: Props) {
  const certain = standing === "certain";
  return useMemo(
    () => (
      <tr data-ion={ion} class={out === undefined ? undefined : "out"}>
        <th scope="row">
          <Words of={ion} /> <span class="name">{name}</span>
        </th>
        {ids.map((id, test) => (
          <td key={id} class={CLASS[said[test]]} data-head={id}>
            <span class="vh">{markWord(said[test], done[test])}</span>
          </td>
        ))}
        <td class="why">
          {standing === "possible" && <b class="fit">still possible</b>}
          {certain && (
            <b class="fit">
              <AfterPaint on={record} of={() => <Words of={proof()} />} first="certain" />
            </b>
          )}
          {waitsFor && <>waits for {waitsFor}</>}
          {out !== undefined && (
            <>
              <b class="clash">out:</b> <Words of={out} />
            </>
          )}
        </td>
      </tr>
    ),
    // The proof of a certain ion may be another one after any change.
    [ion, name, standing, waitsFor, out, said.join(), done.join(), ids.join(), certain ? record : undefined],
  );
}
