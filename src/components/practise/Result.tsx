/** The marked practice: every line with reasons, the conclusion, what the reader's own record leads to, and what to practise next. */
import { useEffect, useMemo, useRef } from "preact/hooks";
import { marked, marks as marksWords, mark as markWords, NOTHING_WRITTEN } from "#words/practise.ts";
import * as say from "#words/practise-result.ts";
import { saltWords } from "../names.ts";
import { dayOf, exportAll, mark, read } from "../progress.ts";
import { Words } from "../Words.tsx";
import type { Session } from "./kept.ts";
import { wordNext } from "./next-words.ts";
import type { Practice, PracticeProps } from "./practice-table.ts";
import { type ConclusionMark, type MarkedPlace, type Reckoning, reckon } from "./reckoning.ts";
import type { Unknown } from "./unknowns.ts";

interface Props {
  props: PracticeProps;
  practice: Practice;
  unknowns: Unknown[];
  session: Session;
  moved: boolean;
  tell(words: string): void;
  onClear(): void;
}

export function Result({ props, practice, unknowns, session, moved, tell, onClear }: Props) {
  const of = useMemo(() => reckon(practice, props.tests, unknowns, session, props.names), [session]);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (moved) heading.current?.focus();
    tell(marksWords(of.earned, of.of));
    const same = read(props.slug)?.occasions.at(-1);
    const marks = { earned: of.earned, of: of.of };
    // A page that is loaded again is no second practice.
    if (same?.how === "blind" && same.seed === session.seed && same.marks?.earned === of.earned) return;
    mark(props.slug, { on: dayOf(new Date()), how: "blind", seed: session.seed, marks });
  }, []);
  const { table, standings, draws } = practice;
  const standing = standings[draws.findIndex((set) => set.join() === unknowns.map(({ salt }) => salt).join())];
  const next = wordNext(of);
  return (
    <section class="result" aria-labelledby="result-heading">
      <h2 id="result-heading" tabIndex={-1} ref={heading}>
        {marked(of.earned, of.of)}{" "}
        <small>
          {say.set(session.seed)}
          {standing && standing !== "undecided" && `, ${say.STANDINGS[standing]}`}
        </small>
      </h2>
      <p>
        {say.UNKNOWNS_WERE}{" "}
        {unknowns.map(({ sample, salt }, index) => (
          <span key={sample}>
            {index > 0 && ", "}
            <b>{sample}</b> {saltWords(table.salts[salt], props.names)} <Words of={table.salts[salt].formula} />
          </span>
        ))}
        .
      </p>
      <h3>{say.CONCLUSION}</h3>
      <Conclusions of={of.conclusions} />
      <h3>{say.LINES}</h3>
      <Lines of={of.lines} />
      <h3>{say.LEADS}</h3>
      <Leads of={of} />
      {next.length > 0 && (
        <>
          <h3>{say.NEXT}</h3>
          <ul>
            {next.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </>
      )}
      <p class="tools screen">
        <button type="button" onClick={() => save(props, session, of)}>
          {say.SAVE}
        </button>
        <button type="button" onClick={() => window.print()}>
          {say.PRINT}
        </button>
        <button type="button" onClick={onClear}>
          {say.CLEAR}
        </button>
        <a href={props.walkthrough}>{say.TO_WALKTHROUGH}</a>
      </p>
    </section>
  );
}

function Conclusions({ of }: { of: ConclusionMark[] }) {
  return (
    <ul class="marks">
      {of.map(({ sample, what, answer, earned, reason }) => (
        <li key={`${sample} ${what}`}>
          <b class={earned ? "fit" : "clash"}>{markWords(earned)}</b> {sample}, {what}: <Words of={answer} />.{" "}
          <Words of={reason} />
        </li>
      ))}
    </ul>
  );
}

function Lines({ of }: { of: MarkedPlace[] }) {
  return (
    <ul class="lines">
      {of.map(({ cell, sample, text, model, marks, besides }) => (
        <li key={`${cell} ${sample}`}>
          <p>
            <b>
              {sample} {cell}
            </b>
            : {text.trim() ? <q>{text}</q> : NOTHING_WRITTEN}{" "}
            <span class={marks.every(({ earned }) => earned) ? "fit" : "clash"}>
              {say.earned(marks.filter(({ earned }) => earned).length, marks.length)}
            </span>
          </p>
          {marks.some(({ earned }) => !earned) && (
            <p class="small">
              {say.MODEL} <Words of={model} />. {[...new Set(marks.flatMap(({ reason }) => reason ?? []))].join(" ")}
              {besides.length > 0 && ` ${say.notSeenThere(besides.join("; "))}`}
            </p>
          )}
        </li>
      ))}
    </ul>
  );
}

/** Lines named before the rest is counted. */
const NAMED = 6;

function Leads({ of }: { of: Reckoning }) {
  return (
    <>
      <p>{of.right ? say.ENOUGH : say.FOLLOWS}</p>
      {!of.right && (
        <ul>
          {of.leads.map((words) => (
            <li key={words}>
              <Words of={words} />
            </li>
          ))}
        </ul>
      )}
      {of.misread.length > 0 && (
        <>
          <p>{say.SAY_WRONG}</p>
          <ul>
            {of.misread.slice(0, NAMED).map(({ cell, sample, text, model }) => (
              <li key={`${cell} ${sample}`}>
                {sample} {cell}: {say.YOU_WROTE} <q>{text}</q>; {say.IT_SHOWED} <Words of={model} />.
              </li>
            ))}
          </ul>
          {of.misread.length > NAMED && <p>{say.andMore(of.misread.length - NAMED)}</p>}
        </>
      )}
      {!of.right && of.misread.length === 0 && <p>{say.NOTHING_WRONG}</p>}
    </>
  );
}

/** A file with this practice and everything practised so far; it goes nowhere but where the reader keeps it. */
function save({ slug, title }: PracticeProps, session: Session, { earned, of, lines, conclusions }: Reckoning): void {
  const written = { practical: slug, title, ...session, marks: { earned, of }, marked: { lines, conclusions } };
  const text = `${JSON.stringify({ practice: written, progress: JSON.parse(exportAll()) }, null, 2)}\n`;
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const anchor = document.createElement("a");
  anchor.href = address;
  anchor.download = `${slug}-${session.seed}.json`;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
