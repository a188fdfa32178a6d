/** One ion of the evidence: a mark for each test, and how it stands. */
import type { VNode } from "preact";
import { useMemo, useRef } from "preact/hooks";
import * as say from "#words/conclude.ts";
import type { IonStanding } from "../../engine/deduction/conclusion.ts";
import { Words } from "../Words.tsx";
import type { Evidence } from "./evidence.ts";

const CLASS: Record<Evidence, string | undefined> = { fits: undefined, border: "b", clashes: "n", nothing: "o" };

interface Props {
  ion: string;
  name: string;
  standing: IonStanding["standing"];
  /** The sample that must be put right before anything is said of this ion. */
  waitsFor: string | undefined;
  /** Why it is out, or what proves it; undefined where there is nothing to say, or it is not worked out yet. */
  why: string | undefined;
  /** What each test says, whether it was done, and its name. */
  said: Evidence[];
  done: boolean[];
  ids: string[];
}

/** Most rows stay as they were when the record changes: the same elements again are not looked through. */
export function MatrixRow({ ion, name, standing, waitsFor, why, said, done, ids }: Props) {
  const marks = useRef(new Map<string, { word: string; mark: VNode }>());
  /** A mark that says what it said is the same element again: a change of the record changes one or two of a row. */
  const markOf = (id: string, says: Evidence, isDone: boolean): VNode => {
    const word = isDone ? say.MARK[says] : say.NOT_DONE;
    const known = marks.current.get(id);
    if (known?.word === word) return known.mark;
    const mark = (
      <td key={id} class={CLASS[says]} data-head={id}>
        <span class="vh">{word}</span>
      </td>
    );
    marks.current.set(id, { word, mark });
    return mark;
  };
  const out = standing === "impossible" && !waitsFor;
  return useMemo(
    () => (
      <tr data-ion={ion} class={out ? "out" : undefined}>
        <th scope="row">
          <Words of={ion} /> <span class="name">{name}</span>
        </th>
        {ids.map((id, test) => markOf(id, said[test], done[test]))}
        <td class="why">
          {standing === "possible" && <b class="fit">{say.STILL_POSSIBLE}</b>}
          {standing === "certain" && (
            <b class="fit">
              <Words of={why ?? say.CERTAIN} />
            </b>
          )}
          {waitsFor && say.waitsFor(waitsFor)}
          {out && (
            <>
              <b class="clash">{say.OUT}</b> {why && <Words of={why} />}
            </>
          )}
        </td>
      </tr>
    ),
    [ion, name, standing, waitsFor, why, said.join(), done.join(), ids.join()],
  );
}
