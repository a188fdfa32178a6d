/** A paper of the reader's own, through the whole job: read, prepare, carry out, record, conclude. */

import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import * as say from "#words/paper.ts";
import * as form from "#words/paper-form.ts";
import { useLater } from "../later.ts";
import { CarryOutPanel } from "./CarryOutPanel.tsx";
import type { Draft } from "./draft.ts";
import { Field, faultsBy } from "./fields.tsx";
import { KeepPanel } from "./KeepPanel.tsx";
import { Paste } from "./Paste.tsx";
import { ProcedureForm } from "./ProcedureForm.tsx";
import type { CautionEntry } from "./paper-work.types.ts";
import { ReadPanel } from "./ReadPanel.tsx";
import { RecordPanel } from "./RecordPanel.tsx";
import { recordOf } from "./record-of.ts";
import { SamplesForm } from "./SamplesForm.tsx";
import { Shelf } from "./Shelf.tsx";
import { type KnownIons, StatementForm } from "./StatementForm.tsx";
import type { Vocabulary } from "./StepForm.tsx";
import { useDraft } from "./use-draft.ts";
import { useLink } from "./use-link.ts";
import { useWork, type WorkState } from "./use-work.ts";

/** What the page is given when it is built. */
export interface Given {
  vocabulary: Vocabulary;
  ions: KnownIons;
  cautions: CautionEntry[];
  examples: { slug: string; title: string }[];
  /** Address of the examples' papers. */
  examplesAt: string;
}

const NO_RECORD = {};
type RoomId = keyof typeof say.PARTS;

export default function OwnPaper({ vocabulary, ions, cautions, examples, examplesAt }: Given) {
  const [news, tell] = useState("");
  const paper = useDraft(tell);
  const { draft } = paper;
  const opening = useLink(paper.open, tell);
  const state = useWork(draft, cautions, !paper.untouched);
  const { work, fresh } = state;
  const faults = useMemo(() => faultsBy(paper.untouched ? [] : state.faults), [state.faults, paper.untouched]);
  const { record, unknown } = useMemo(
    () => (work && fresh ? recordOf(draft, work) : { record: NO_RECORD, unknown: false }),
    [draft, work, fresh],
  );
  const entry = { draft, faults, edit: paper.edit, focus: paper.focus };
  const tested = work && work.tests.length > 0 ? work : undefined;
  const room = { open: tested !== undefined, until: untilTested(draft, opening || (state.working && !state.fresh)) };
  return (
    <>
      <nav class="job" aria-label={say.JOB}>
        <ol>
          {Object.entries(say.PARTS).map(([id, [name]]) => (
            <li key={id}>
              <a href={`#${id}`}>{name}</a>
            </li>
          ))}
        </ol>
      </nav>
      <Shelf paper={paper} examples={examples} examplesAt={examplesAt} tell={tell} />
      <p role="status" class="news">
        {news}
      </p>
      <section class="step" aria-labelledby="read">
        <h2 id="read" tabIndex={-1}>
          {say.PARTS.read[0]} <small>{say.PARTS.read[1]}</small>
        </h2>
        <div class="paper-form screen">
          <div class="row">
            <Field
              name={form.TITLE}
              place="title"
              size={30}
              value={draft.title}
              fault={faults("title")}
              onType={(title) => paper.edit({ ...draft, title })}
            />
            <Field
              name={form.MINUTES}
              place="minutes"
              size={4}
              value={draft.minutes}
              fault={faults("minutes")}
              onType={(minutes) => paper.edit({ ...draft, minutes })}
            />
          </div>
          <SamplesForm {...entry} />
          <StatementForm {...entry} ions={ions} house={vocabulary.house} />
          <Paste
            draft={draft}
            edit={paper.edit}
            focus={paper.focus}
            bottles={vocabulary.bottles}
            house={vocabulary.house}
          />
          <ProcedureForm {...entry} {...vocabulary} />
        </div>
        <p class="print paper-title">{draft.title}</p>
        <Standing state={state} count={state.faults.length} untouched={paper.untouched} />
        {work && <ReadPanel work={work} />}
      </section>
      <Room id="prepare" {...room}>
        {tested && <Bench draft={draft} work={tested} />}
      </Room>
      <Room id="carry-out" {...room}>
        {tested && <CarryOutPanel work={tested} />}
      </Room>
      <Room id="record" {...room}>
        {tested && (
          <RecordPanel
            draft={draft}
            work={tested}
            record={record}
            fresh={fresh}
            waiting={unknown}
            edit={paper.edit}
            focus={paper.focus}
          />
        )}
      </Room>
      <Room id="conclude" {...room}>
        {tested && fresh && <Follows {...{ draft, work: tested, record, cautions }} />}
      </Room>
      <section class="step screen" aria-labelledby="keep">
        <h2 id="keep" tabIndex={-1}>
          {say.KEEP_AND_SHARE} <small>{say.PARTS.keep[1]}</small>
        </h2>
        <KeepPanel draft={draft} work={fresh ? work : undefined} record={record} />
      </section>
    </>
  );
}

interface RoomProps {
  id: RoomId;
  open: boolean;
  /** What is said while it is not. */
  until: string;
  children: preact.ComponentChildren;
}

/** What a part of the job says while there is no test to work with. */
function untilTested({ parts }: Draft, isWorking: boolean): string {
  if (isWorking) return say.WORKING;
  return parts.length > 0 ? say.WHEN_A_TEST_IS_WHOLE : say.WHEN_THERE_IS_A_TEST;
}

/** One part of the job. */
function Room({ id, open, until, children }: RoomProps) {
  const [name, small] = say.PARTS[id];
  return (
    <section class="step" aria-labelledby={id}>
      <h2 id={id} tabIndex={-1}>
        {name} <small>{small}</small>
      </h2>
      {open ? children : <p class="soft">{until}</p>}
    </section>
  );
}

/** How the work stands. */
function Standing({ state, count, untouched }: { state: WorkState; count: number; untouched: boolean }) {
  const { working, progress, refused, work, fresh } = state;
  if (untouched) return null;
  const word = working && !fresh ? say.WORKING : work ? say.WORKED_OUT : "";
  return (
    <div class="standing screen">
      <p role="status">
        {refused ? (
          <span class="caution">{refused}</span>
        ) : (
          <>
            {word}
            {count > 0 && ` ${say.notFinished(count)}`}
          </>
        )}
      </p>
      {progress && (
        <p class="soft small" aria-hidden="true">
          {say.progress(fresh, progress.done, progress.of)} <progress value={progress.done} max={progress.of} />
        </p>
      )}
    </div>
  );
}

type Later = typeof import("./PreparePanel.tsx");

/** The bench, whose drawing and reckoning are fetched when there is one. */
function Bench(of: Parameters<Later["PreparePanel"]>[0]) {
  const { module, failed, load } = useLater(() => import("./PreparePanel.tsx"));
  const { whole } = of.work;
  // What follows from the record comes first; the bench when all is worked out, so that it is there for the printer too.
  useEffect(() => {
    if (whole) load();
  }, [whole]);
  if (failed) return <p class="caution">{say.BENCH_NOT_FETCHED}</p>;
  return module ? <module.PreparePanel {...of} /> : <p class="soft">{say.DRAWING_BENCH}</p>;
}

type Followed = typeof import("./PaperConclusion.tsx");
type Following = Pick<Parameters<typeof KeepPanel>[0], "draft" | "record"> & { cautions: CautionEntry[] } & Parameters<
    Later["PreparePanel"]
  >[0];

/** What follows, whose reasoning is fetched when something is recorded or a reader comes near. */
function Follows({ draft, work: { table, names, tests }, record, cautions }: Following) {
  const { module, failed, load } = useLater<Followed>(() => import("./PaperConclusion.tsx"));
  const place = useRef<HTMLParagraphElement>(null);
  const isRecorded = Object.values(record).some((row) => Object.keys(row).length > 0);
  useEffect(() => {
    const waits = !isRecorded && typeof IntersectionObserver !== "undefined";
    if (waits && place.current) return whenNear(place.current, load);
    load();
    return undefined;
  }, [isRecorded]);
  if (failed) return <p class="caution">{say.CONCLUSION_NOT_FETCHED}</p>;
  return module ? (
    <module.PaperConclusion {...{ table, names, tests, record, cautions, draft }} />
  ) : (
    <p class="soft" ref={place}>
      {isRecorded ? say.WORKING : say.NOTHING_RECORDED}
    </p>
  );
}

/** Calls back once a place is a screen away or less; returns what ends the watch. */
function whenNear(place: Element, near: () => void): () => void {
  const watch = new IntersectionObserver((seen) => seen.some(({ isIntersecting }) => isIntersecting) && near(), {
    rootMargin: "100% 0px",
  });
  watch.observe(place);
  return () => watch.disconnect();
}
