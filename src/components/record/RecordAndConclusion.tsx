/**
 * The record and what follows from it. Both are built into the page for the walkthrough's own record, so that it reads without script; in
 * the browser every observation can be changed and the conclusion is worked out anew, from the table of predictions alone.
 */
import type { ComponentChildren } from "preact";
import { useEffect, useMemo, useRef } from "preact/hooks";
import * as words from "#words/record.ts";
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { useAwake } from "../awake.ts";
import { useConclusion } from "../conclude/use-conclusion.ts";
import { MarkPractised } from "../map/MarkPractised.tsx";
import type { IonNames } from "../names.ts";
import { rich } from "../sentence.ts";
import { useHeldBack } from "../teacher-link/held-back.ts";
import { inWords } from "./in-words.ts";
import { RecordTable } from "./RecordTable.tsx";
import type { RecordSheet, SheetLine } from "./record-sheet.ts";
import { useRecord } from "./use-record.ts";

interface Props {
  /** Name of the practical. */
  practical: string;
  /** A RecordSheet as JSON: as one string it takes a third of the space it would as separate properties. */
  sheet: string;
  /** Address of the table of predictions, fetched when the reader turns to the record. */
  predictionsAt: string;
  /** The walkthrough's record. */
  given: TableRecord;
  /** What is done at each cell, in the order of the table, in words. */
  tests: string[];
  /** Names of the ions the paper allows. */
  names: IonNames;
  /** Address of the further tests, fetched when the paper's own are at an end. */
  furtherAt?: string;
  /** The conclusion from the walkthrough's record, as built into the page. */
  conclusion?: ComponentChildren;
}

const at = (of: TableRecord, { sample, id }: { sample: string; id: string }) => of[sample]?.[id];

export default function RecordAndConclusion({
  practical,
  sheet: json,
  predictionsAt,
  given,
  tests,
  names,
  furtherAt,
  conclusion,
}: Props) {
  const sheet = useMemo(() => JSON.parse(json) as RecordSheet, [json]);
  const awake = useAwake();
  const { reasoning, failed, load } = useConclusion(predictionsAt);
  const { isHeld, fault, show } = useHeldBack();
  const news = useRef<HTMLParagraphElement>(null);
  /** Speaks what was done and what it changed, in a sentence: written past Preact, which would look through the whole island again. */
  const tell = (next: TableRecord, what: string, from = record) =>
    load().then((ready) => {
      const follows = ready
        ? ready.changeInWords({ table: ready.table, names, record: next }, from)
        : words.STILL_THAT_OF_THE_WALKTHROUGH;
      const held = document.documentElement.dataset.conclusion !== undefined;
      if (news.current) news.current.innerHTML = rich(held ? `${what}.` : `${what}; ${follows}.`);
    });
  const kept = useRecord(sheet, given, ({ record }) => tell(record, words.FOUND_IN_LINK));
  const { record, own, before } = kept;
  const faults = fault ? [...kept.faults, fault] : kept.faults;
  const places = sheet.samples.flatMap(({ label: sample }) =>
    sheet.cells.filter((cell) => cell.samples.includes(sample)).map(({ id }) => ({ sample, id })),
  );
  const done = places.filter((place) => at(record, place) !== undefined).length;
  const changes = places.filter((place) => at(record, place) !== at(given, place)).length;

  const change = (sample: string, cell: SheetLine, reading: number | undefined) => {
    const { [cell.id]: _, ...row } = record[sample] ?? {};
    const next = { ...record, [sample]: reading === undefined ? row : { ...row, [cell.id]: reading } };
    kept.set(next);
    tell(next, `${words.cellFor(cell.id, sample)}: ${inWords(cell, reading)}`);
  };
  const begin = (own: boolean) => {
    kept.begin(own);
    tell(own ? {} : given, own ? words.EMPTIED : words.BACK);
  };
  const undo = () => tell(kept.undo(), words.UNDONE);
  // One that has nothing to do keeps the focus: who pressed it with the keyboard would be sent back to the top of the page.
  const button = (text: string, isOf: boolean, press: () => void) => (
    <button type="button" disabled={!awake} aria-disabled={!isOf} onClick={() => isOf && press()}>
      {text}
    </button>
  );
  // Once a reader has changed something the conclusion stays the island's own, also when the record is the walkthrough's again: to put
  // back the one built into the page would draw every mark anew.
  const touched = useRef(false);
  touched.current ||= changes > 0;
  const compare = changes > 0 && !own;
  // The same element again is not looked through again.
  const follows = useMemo(() => {
    const of = { tests, names, record, given: compare ? given : undefined, furtherAt };
    return reasoning && <reasoning.Conclusion {...of} table={reasoning.table} />;
  }, [reasoning, tests, names, record, given, compare, furtherAt]);
  /** The reader turned to this part. */
  const turned = reasoning ? undefined : load;
  const conclude = useRef<HTMLElement>(null);
  const tapped = useRef<EventTarget | null>();
  useEffect(() => {
    if (!conclude.current || !reasoning) return;
    const early = tapped.current;
    tapped.current = undefined;
    return reasoning.answerMarks(conclude.current, { table: reasoning.table, names, record }, early);
  }, [reasoning, names, record]);

  return (
    <>
      <section class="step" aria-labelledby="record" onPointerOver={turned} onFocusIn={turned}>
        <h2 id="record">
          {words.HEADING} <small>{words.ABOUT}</small>
        </h2>
        {isHeld && <p class="held">{words.HELD}</p>}
        <div class="tools">
          {button(words.RESET, changes > 0, () => begin(false))}
          {button(words.EMPTY, done > 0, () => begin(true))}
          {button(words.UNDO, kept.canUndo, undo)}
          <span>
            {changes === 0 && words.AS_GIVEN}
            {changes > 0 && !own && words.changed(changes)}
            {changes > 0 && own && words.filledIn(done, places.length)}
          </span>
        </div>
        {faults.length > 0 && (
          <div class="caution" role="status">
            <p>
              <b>{words.UNREADABLE}</b> {kept.faults.length > 0 && words.unreadableLeft(own)}
            </p>
            <ul>
              {faults.map((fault, index) => (
                <li key={index}>{fault}</li>
              ))}
            </ul>
          </div>
        )}
        {changes > 0 && <p class="small soft">{whereKept()}</p>}
        <RecordTable
          table={sheet}
          tests={tests}
          record={record}
          before={before}
          awake={awake}
          takesElse
          onChange={change}
        />
      </section>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: a tap on a mark that comes before the reasoning is kept for it */}
      <section
        class="step"
        aria-labelledby="conclude"
        ref={conclude}
        onPointerOver={turned}
        onFocusIn={turned}
        onClick={({ target }) => {
          tapped.current = reasoning ? undefined : target;
        }}
      >
        <h2 id="conclude">
          {words.CONCLUDE_HEADING} <small>{words.CONCLUDE_ABOUT}</small>
        </h2>
        <p class="vh" aria-live="polite" ref={news} />
        {isHeld && (
          <p class="held">
            {words.HELD}{" "}
            <button type="button" onClick={show}>
              {words.SHOW_CONCLUSION}
            </button>
          </p>
        )}
        {changes > 0 && !reasoning && (
          <p class={failed ? "caution" : "soft"}>{failed ? words.NOT_LOADED : words.WORKING}</p>
        )}
        {touched.current && follows ? follows : conclusion}
      </section>
      {awake && <MarkPractised practical={practical} />}
    </>
  );
}

/** Where the record is kept: the address of a page in a frame is not in sight, and a file from disk has none. */
function whereKept(): string {
  if (location.protocol === "file:") return words.FROM_DISK;
  return window.top === window ? words.IN_ADDRESS : words.IN_FRAME;
}
