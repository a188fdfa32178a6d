/** A paper of the reader's own, through the whole job: read, prepare, carry out, record, conclude. */
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
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

interface Props {
  vocabulary: Vocabulary;
  ions: KnownIons;
  cautions: CautionEntry[];
  examples: { slug: string; title: string }[];
  /** Address of the examples' papers. */
  examplesAt: string;
}

const NO_RECORD = {};
const PARTS = [
  ["read", "Read"],
  ["prepare", "Prepare"],
  ["carry-out", "Carry out"],
  ["record", "Record"],
  ["conclude", "Conclude"],
  ["keep", "Keep"],
] as const;

export default function OwnPaper({ vocabulary, ions, cautions, examples, examplesAt }: Props) {
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
  const form = { draft, faults, edit: paper.edit, focus: paper.focus };
  const tested = work && work.tests.length > 0 ? work : undefined;
  const room = { open: tested !== undefined, until: untilTested(draft, opening || (state.working && !state.fresh)) };
  return (
    <>
      <nav class="job" aria-label="Parts of the job">
        <ol>
          {PARTS.map(([id, name]) => (
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
          Read <small>what the paper gives and asks</small>
        </h2>
        <div class="paper-form screen">
          <div class="row">
            <Field
              name="Title"
              place="title"
              size={30}
              value={draft.title}
              fault={faults("title")}
              onType={(title) => paper.edit({ ...draft, title })}
            />
            <Field
              name="Minutes allowed"
              place="minutes"
              size={4}
              value={draft.minutes}
              fault={faults("minutes")}
              onType={(minutes) => paper.edit({ ...draft, minutes })}
            />
          </div>
          <SamplesForm {...form} />
          <StatementForm {...form} ions={ions} house={vocabulary.house} />
          <Paste
            draft={draft}
            edit={paper.edit}
            focus={paper.focus}
            bottles={vocabulary.bottles}
            house={vocabulary.house}
          />
          <ProcedureForm {...form} {...vocabulary} />
        </div>
        <p class="print paper-title">{draft.title}</p>
        <Standing state={state} count={state.faults.length} untouched={paper.untouched} />
        {work && <ReadPanel work={work} />}
      </section>
      <Room id="prepare" name="Prepare" small="before anything is opened" {...room}>
        {tested && <Bench draft={draft} work={tested} />}
      </Room>
      <Room id="carry-out" name="Carry out" small="one fresh tube for each sample in each part" {...room}>
        {tested && <CarryOutPanel work={tested} />}
      </Room>
      <Room id="record" name="Record" small="what you see, in words that earn the mark" {...room}>
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
      <Room id="conclude" name="Conclude" small="from this record and what the paper says" {...room}>
        {tested && fresh && <Follows {...{ draft, work: tested, record, cautions }} />}
      </Room>
      <section class="step screen" aria-labelledby="keep">
        <h2 id="keep" tabIndex={-1}>
          Keep and share <small>nothing leaves this machine</small>
        </h2>
        <KeepPanel draft={draft} work={fresh ? work : undefined} record={record} />
      </section>
    </>
  );
}

interface RoomProps {
  id: string;
  name: string;
  small: string;
  open: boolean;
  /** What is said while it is not. */
  until: string;
  children: preact.ComponentChildren;
}

/** What a part of the job says while there is no test to work with. */
function untilTested({ parts }: Draft, isWorking: boolean): string {
  if (isWorking) return "Working it out …";
  if (parts.length > 0) return "This follows as soon as one test is whole: what is missing is marked at its steps.";
  return "This follows as soon as the paper has a test.";
}

/** One part of the job. */
function Room({ id, name, small, open, until, children }: RoomProps) {
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
  const word = working && !fresh ? "Working it out …" : work ? "Worked out." : "";
  return (
    <div class="standing screen">
      <p role="status">
        {refused ? (
          <span class="caution">{refused}</span>
        ) : (
          <>
            {word}
            {count > 0 &&
              ` ${count === 1 ? "One entry is" : `${count} entries are`} not finished, and left out of what follows.`}
          </>
        )}
      </p>
      {progress && (
        <p class="soft small" aria-hidden="true">
          {fresh ? "Looking for what stands near a limit" : "Carrying the tests out on each salt"}: {progress.done} of{" "}
          {progress.of} <progress value={progress.done} max={progress.of} />
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
  if (failed) return <p class="caution">The bench plan could not be fetched. Load the page again.</p>;
  return module ? <module.PreparePanel {...of} /> : <p class="soft">Drawing the bench …</p>;
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
  if (failed)
    return <p class="caution">The conclusion could not be fetched. Your record is kept; load the page again.</p>;
  return module ? (
    <module.PaperConclusion {...{ table, names, tests, record, cautions, draft }} />
  ) : (
    <p class="soft" ref={place}>
      {isRecorded ? "Working it out …" : "Nothing is recorded yet."}
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
