/** One test on all its samples: expect, carry out and look, record, then the model wording with the marks. */
import { useEffect, useRef, useState } from "preact/hooks";
import * as say from "#words/practise.ts";
import { Words } from "../Words.tsx";
import type { Session } from "./kept.ts";
import { colourOfReagent, wordSight, wordTube } from "./look-words.ts";
import { markedLine } from "./marked-line.ts";
import type { Practice, PracticeTest } from "./practice-table.ts";
import { RecordLine } from "./RecordLine.tsx";
import { SeenTube } from "./SeenTube.tsx";
import { tubeAfter, tubeBefore } from "./tube-state.ts";
import type { Unknown } from "./unknowns.ts";

interface Props {
  practice: Practice;
  tests: PracticeTest[];
  unknowns: Unknown[];
  session: Session;
  /** The reader came here by something they did. */
  moved: boolean;
  onChange(next: Session): void;
  tell(words: string): void;
}

export function TestStep({ practice, tests, unknowns, session, moved, onChange, tell }: Props) {
  const { at, stage } = session;
  const test = tests[at];
  const cell = practice.table.cells[at];
  const done = unknowns.filter(({ seen }) => seen[at] !== undefined);
  const lines = session.lines[test.id] ?? {};
  const [warned, warn] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const look = useRef<HTMLHeadingElement>(null);
  const shown = useRef<HTMLHeadingElement>(null);
  const arrived = useRef(stage);

  // The reader comes to a new test, or to a new stage of it: focus goes to its heading, but not when the page is first opened.
  useEffect(() => {
    if (stage === "before" && moved) heading.current?.focus();
    if (stage !== arrived.current) (stage === "seen" ? look : shown).current?.focus();
    arrived.current = stage;
  }, [stage]);

  const write = (sample: string, text: string) => {
    warn(false);
    onChange({ ...session, lines: { ...session.lines, [test.id]: { ...lines, [sample]: text } } });
  };
  const marked = stage === "shown" ? done.map((of) => markedLine(practice, tests, of, at, lines[of.sample] ?? "")) : [];
  const reveal = () => {
    const empty = done.find(({ sample }) => !lines[sample]?.trim());
    if (empty && !warned) {
      warn(true);
      form.current?.querySelector<HTMLInputElement>(`[name="${empty.sample}"]`)?.focus();
      tell(say.stillEmpty(empty.sample));
      return;
    }
    onChange({ ...session, stage: "shown" });
    const all = done.flatMap((of) => markedLine(practice, tests, of, at, lines[of.sample] ?? "").marks);
    tell(say.marks(all.filter(({ earned }) => earned).length, all.length));
  };
  const next = () => {
    onChange({ ...session, at: at + 1, stage: "before" });
    tell(at + 1 < tests.length ? say.nextTest(tests[at + 1].id) : say.ALL_DONE);
  };

  return (
    <section class="test-step" aria-labelledby="test-heading">
      <h2 id="test-heading" tabIndex={-1} ref={heading}>
        {test.id}{" "}
        <small>
          <Words of={test.part} />
        </small>
      </h2>
      <div class="leaf">
        {test.cautions.length > 0 && (
          <aside class="margin" aria-label={say.cautionsFor(test.id)}>
            {test.cautions.map(({ hazard, summary, title, href }) => (
              <div class="caution" key={title}>
                <p>
                  <b>
                    {say.TAKE_CARE} {hazard}.
                  </b>{" "}
                  {summary && (
                    <>
                      <Words of={summary} />{" "}
                    </>
                  )}
                  <a href={href}>{title}</a>
                </p>
              </div>
            ))}
          </aside>
        )}
        <div>
          {test.says && (
            <p>
              {say.TEST_SAYS}{" "}
              <q>
                <Words of={test.says} />
              </q>
            </p>
          )}
          <ol>
            {test.steps.map((step) => (
              <li key={step}>
                <Words of={step} />
              </li>
            ))}
          </ol>
          {stage === "before" && (
            <>
              <p>
                <label>
                  {say.EXPECT} <span class="soft">{say.EXPECT_OR_LEAVE}</span>
                  <input
                    type="text"
                    class="wide"
                    maxLength={300}
                    autocomplete="off"
                    value={session.expected[test.id] ?? ""}
                    onInput={({ currentTarget }) =>
                      onChange({ ...session, expected: { ...session.expected, [test.id]: currentTarget.value } })
                    }
                  />
                </label>
              </p>
              <p>
                <button type="button" class="main" onClick={() => onChange({ ...session, stage: "seen" })}>
                  {say.CARRY_OUT}
                </button>
              </p>
            </>
          )}
          {stage !== "before" && session.expected[test.id] && (
            <p class="small">
              {say.EXPECTED} {session.expected[test.id]}
            </p>
          )}
        </div>
      </div>
      <form
        ref={form}
        onSubmit={(event) => {
          event.preventDefault();
          if (stage === "seen") reveal();
          else if (stage === "shown") next();
        }}
      >
        {stage !== "before" && (
          <h3 tabIndex={-1} ref={look}>
            {say.SEE}
          </h3>
        )}
        <div class="tubes">
          {done.map((of) => {
            const before = tubeBefore(practice, tests, of, at);
            const after = tubeAfter(practice, tests, of, at);
            const seen = of.seen[at];
            if (!seen) return null;
            const isBefore = stage === "before";
            const said = isBefore
              ? wordTube(before)
              : wordSight(seen.shown, before, after, test.asked, colourOfReagent(cell.readings));
            return (
              <div class="tube" key={of.sample}>
                <h4>{of.sample}</h4>
                <div class="looked">
                  <SeenTube of={isBefore ? before : after} {...(!isBefore && { shown: seen.shown })} />
                  <p class="small">{said.join(" ")}</p>
                </div>
                {stage === "seen" && (
                  <RecordLine
                    sample={of.sample}
                    text={lines[of.sample] ?? ""}
                    asked={{ ...test.asked, solid: before.solid !== undefined }}
                    choices={cell.words}
                    onWrite={(text) => write(of.sample, text)}
                    tell={tell}
                  />
                )}
              </div>
            );
          })}
        </div>
        {done.length < unknowns.length && stage !== "before" && (
          <p class="small soft">
            {say.notDoneOn(
              unknowns
                .filter((of) => !done.includes(of))
                .map(({ sample }) => sample)
                .join(", "),
            )}
          </p>
        )}
        {warned && <p class="caution">{say.LINE_EMPTY}</p>}
        {stage === "seen" && (
          <p>
            <button type="submit" class="main">
              {say.SHOW_MODEL}
            </button>
          </p>
        )}
        {stage === "shown" && (
          <>
            <h3 tabIndex={-1} ref={shown}>
              {count(marked)}
            </h3>
            {done.map((of, index) => (
              <Marked key={of.sample} sample={of.sample} text={lines[of.sample] ?? ""} of={marked[index]} />
            ))}
            <p>
              <button type="submit" class="main">
                {at + 1 < tests.length ? say.onTo(tests[at + 1].id) : say.ON_TO_CONCLUSION}
              </button>
            </p>
          </>
        )}
      </form>
    </section>
  );
}

type MarkedOf = ReturnType<typeof markedLine>;

const count = (marked: MarkedOf[]): string => {
  const all = marked.flatMap(({ marks }) => marks);
  return say.marked(all.filter(({ earned }) => earned).length, all.length);
};

/** One line with its marks. */
function Marked({ sample, text, of }: { sample: string; text: string; of: MarkedOf }) {
  return (
    <div class="marked">
      <p>
        <b>{sample}</b>: <Words of={of.model} />
        <span class="small soft"> {say.MODEL_WORDING}</span>
        <br />
        {say.YOU_WROTE} {text.trim() ? <q>{text}</q> : say.WROTE_NOTHING}
      </p>
      <ul class="marks">
        {of.marks.map(({ words, earned, reason }) => (
          <li key={words}>
            <b class={earned ? "fit" : "clash"}>{say.mark(earned)}</b> <Words of={words} />
            {reason && <span class="reason">. {reason}</span>}
          </li>
        ))}
      </ul>
      {of.besides.length > 0 && <p class="small">{say.notSeenHere(of.besides.join("; "))}</p>}
    </div>
  );
}
