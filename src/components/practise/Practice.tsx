/**
 * A practical with unknowns drawn by a number: test by test the reader expects, carries out, looks, records, and only then sees the model
 * wording with the marks; at the end they conclude. Everything stays in this browser.
 */
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import * as say from "#words/practise.ts";
import { useLater } from "../later.ts";
import { Begin } from "./Begin.tsx";
import { Conclude } from "./Conclude.tsx";
import { begun, clearSession, keepSession, readSession, type Session } from "./kept.ts";
import type { PracticeProps } from "./practice-table.ts";
import { readSeed } from "./seed.ts";
import { TestStep } from "./TestStep.tsx";
import { unknownsOf } from "./unknowns.ts";

export default function Practice(props: PracticeProps) {
  const { slug, tests, practice } = props;
  const [awake, wake] = useState(false);
  const [session, set] = useState<Session>();
  const [fault, refuse] = useState<string>();
  /** The number of the address, and the practice under way, where they are not the same. */
  const [asked, ask] = useState<number>();
  const [underWay, hold] = useState<Session>();
  const [isKept, note] = useState(true);
  /** The reader has done something: focus may follow them, but never when a page is first opened. */
  const moved = useRef(false);
  const news = useRef<HTMLParagraphElement>(null);
  const tell = (words: string) => {
    if (news.current) news.current.textContent = words;
  };
  const { module: reckoning, failed, load } = useLater(() => import("./Result.tsx"));

  // A number in the address does not end a practice with another number that is under way: the reader is asked.
  useEffect(() => {
    wake(true);
    const asked = new URLSearchParams(location.search).get("seed");
    const kept = readSession(slug, tests.length);
    const seed = asked === null ? kept?.seed : readSeed(asked);
    const underWay = kept && !kept.concluded && (kept.at > 0 || kept.stage !== "before") ? kept : undefined;
    if (typeof seed === "string") refuse(seed);
    else if (kept && kept.seed === seed) return set(kept);
    else if (seed !== undefined && !underWay) return set(begun(seed));
    else if (seed !== undefined) ask(seed);
    hold(underWay);
  }, []);

  useEffect(() => {
    if (session?.concluded) load();
    if (!session) return;
    try {
      history.replaceState(history.state, "", `${location.pathname}?seed=${session.seed}${location.hash}`);
    } catch {
      // Some browsers refuse after many changes in a short time; the number stands on the page as well.
    }
  }, [session?.seed, session?.concluded]);

  const change = (next: Session) => {
    moved.current = true;
    set(next);
    note(keepSession(slug, next));
  };
  const begin = (seed: number) => {
    refuse(undefined);
    ask(undefined);
    hold(undefined);
    change(begun(seed));
    tell(say.drawn(seed, tests[0].id));
  };
  const leave = () => {
    clearSession(slug);
    set(undefined);
    history.replaceState(history.state, "", location.pathname);
    tell(say.CLEARED);
  };

  const unknowns = useMemo(() => session && unknownsOf(practice, session.seed), [practice, session?.seed]);
  return (
    <div class="practise">
      <p class="vh" aria-live="polite" ref={news} />
      {!session && (
        <Begin awake={awake} fault={fault} asked={asked} underWay={underWay} onBegin={begin} onGoOn={change} />
      )}
      {session && unknowns && (
        <>
          <p class="tools screen">
            <span>
              {say.SET} <b>{session.seed}</b>
              {say.SAME_UNKNOWNS}
            </span>
            <button type="button" onClick={leave}>
              {say.CLEAR}
            </button>
          </p>
          {!isKept && <p class="caution">{say.NOT_KEPT}</p>}
          {!session.concluded && <Way session={session} tests={tests.map(({ id }) => id)} />}
          {session.at < tests.length && (
            <TestStep
              key={`${session.seed} ${session.at}`}
              practice={practice}
              tests={tests}
              unknowns={unknowns}
              session={session}
              moved={moved.current}
              onChange={change}
              tell={tell}
            />
          )}
          {session.at === tests.length && !session.concluded && (
            <Conclude
              props={props}
              practice={practice}
              unknowns={unknowns}
              session={session}
              moved={moved.current}
              onChange={change}
            />
          )}
          {session.concluded && reckoning && (
            <reckoning.Result
              props={props}
              practice={practice}
              unknowns={unknowns}
              session={session}
              moved={moved.current}
              tell={tell}
              onClear={leave}
            />
          )}
          {session.concluded && !reckoning && (
            <p class={failed ? "caution" : "soft"}>{failed ? say.NOT_FETCHED : say.MARKING}</p>
          )}
        </>
      )}
    </div>
  );
}

/** Where the reader is on the way. */
function Way({ session, tests }: { session: Session; tests: string[] }) {
  return (
    <ol class="way" aria-label={say.WAY}>
      {[...tests, say.LAST].map((id, index) => (
        <li
          key={id}
          aria-current={index === session.at ? "step" : undefined}
          class={index < session.at ? "done" : undefined}
        >
          {id}
          {index < session.at && <span class="vh"> {say.DONE}</span>}
        </li>
      ))}
    </ol>
  );
}
