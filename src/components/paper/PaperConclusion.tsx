/** What follows from the record of a paper, and the tests besides those of the paper that could settle what it leaves open. */

import { useEffect, useRef, useState } from "preact/hooks";
import * as say from "#words/paper-parts.ts";
import { nextTests } from "../../engine/deduction/next-test.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import { ConclusionPanel } from "../conclude/ConclusionPanel.tsx";
import { findingOf, type Recorded } from "../conclude/finding.ts";
import type { FurtherList } from "../conclude/further-list.ts";
import { TooMuch } from "../conclude/TooMuch.tsx";
import { useLater } from "../later.ts";
import { type Draft, written } from "./draft.ts";
import { desk } from "./paper-desk.ts";
import type { CautionEntry } from "./paper-work.types.ts";

interface Props extends Recorded {
  tests: string[];
  draft: Draft;
  cautions: readonly CautionEntry[];
}

export function PaperConclusion({ table, names, record, tests, draft, cautions }: Props) {
  const finding = findingOf({ table, names, record });
  // Where nothing can be followed there are no samples to say anything of.
  const samples = finding?.conclusion.samples ?? [];
  const left = Object.fromEntries(
    samples.map(({ sample, salts }) => [sample, salts.map((salt) => table.salts[salt].formula)]),
  );
  const about = JSON.stringify(left);
  const [found, keep] = useState<{ about: string; further?: FurtherList; refused?: string }>();
  const [looking, look] = useState(false);
  const here = useRef<HTMLDivElement>(null);
  const further = found?.about === about ? found.further : undefined;
  const refused = found?.about === about ? found.refused : undefined;
  const none = found?.about === about && !further && !refused;
  const open = samples.some(({ salts }) => salts.length > 1);
  const atEnd = open && unlessTooMuch(() => nextTests(table, record))?.length === 0;

  // The marks of the evidence answer from when a reader turns to them; a tap that comes before is kept for them.
  const { module: marks, load } = useLater(() => import("../conclude/marks.ts"));
  const tapped = useRef<EventTarget | null>();
  useEffect(() => {
    if (!marks || !here.current) return;
    const early = tapped.current;
    tapped.current = undefined;
    return marks.answerMarks(here.current, { table, names, record }, early);
  }, [marks, table, names, record]);

  const later = useLater(() => import("../conclude/FurtherTests.tsx"));
  const ask = async () => {
    look(true);
    later.load();
    const answer = await desk.lookFurther(written(draft), left, cautions);
    look(false);
    keep({ about, ...("refused" in answer ? answer : { ...(answer.further && { further: answer.further }) }) });
  };

  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: a tap on a mark that comes before the marks can answer is kept for them
    // biome-ignore lint/a11y/noStaticElementInteractions: the marks within are what is tapped
    <div
      ref={here}
      onPointerOver={load}
      onFocusIn={load}
      onClick={({ target }) => {
        tapped.current = marks ? undefined : target;
      }}
    >
      {finding ? (
        <ConclusionPanel
          {...finding}
          key={further && later.module ? about : ""}
          table={table}
          names={names}
          record={record}
          tests={tests}
          beyond={(left) =>
            further && later.module && <later.module.FurtherTests table={table} left={left} further={further} />
          }
        />
      ) : (
        <TooMuch />
      )}
      {atEnd && !further && (
        <p>
          {!none && (
            <button type="button" disabled={looking} onClick={ask}>
              {looking ? say.LOOKING : say.LOOK}
            </button>
          )}
          <span role="status">
            {none && say.NONE_WOULD}
            {refused}
          </span>
        </p>
      )}
    </div>
  );
}
