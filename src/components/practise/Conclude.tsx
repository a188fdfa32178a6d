/** The reader's conclusion: for each sample its ions, and the tests that prove each. */
import { useEffect, useRef } from "preact/hooks";
import * as say from "#words/practise.ts";
import { withName } from "../names.ts";
import { plain } from "../sentence.ts";
import { Words } from "../Words.tsx";
import { type Answer, OPEN, type Session } from "./kept.ts";
import type { Practice, PracticeProps } from "./practice-table.ts";
import type { Unknown } from "./unknowns.ts";

interface Props {
  props: PracticeProps;
  practice: Practice;
  unknowns: Unknown[];
  session: Session;
  moved: boolean;
  onChange(next: Session): void;
}

const NONE: Answer = { ions: [], because: [] };

export function Conclude({ props, practice, unknowns, session, moved, onChange }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (moved) heading.current?.focus();
  }, []);
  const { table } = practice;
  const set = (sample: string, kind: "cations" | "anions", next: Answer) => {
    const own = session.answers[sample] ?? { cations: NONE, anions: NONE };
    onChange({ ...session, answers: { ...session.answers, [sample]: { ...own, [kind]: next } } });
  };
  return (
    <section class="test-step" aria-labelledby="conclude-heading">
      <h2 id="conclude-heading" tabIndex={-1} ref={heading}>
        {say.CONCLUDE} <small>{say.CONCLUDE_ABOUT}</small>
      </h2>
      <details>
        <summary>{say.PAPER_SAYS}</summary>
        <ul>
          {props.paper.map((says) => (
            <li key={says}>
              <Words of={says} />
            </li>
          ))}
        </ul>
      </details>
      <OwnRecord tests={props.tests} unknowns={unknowns} session={session} />
      <form
        onSubmit={(event) => {
          event.preventDefault();
          onChange({ ...session, concluded: true });
        }}
      >
        {unknowns.map(({ sample, seen }) => (
          <fieldset class="answer" key={sample}>
            <legend>{sample}</legend>
            {(["cations", "anions"] as const).map((kind) => {
              const own = session.answers[sample]?.[kind] ?? NONE;
              const what = say.KIND[kind];
              const many = props.holds[sample][kind];
              return (
                <div key={kind}>
                  {Array.from({ length: many }, (_, place) => (
                    <label key={place}>
                      {what}
                      {many > 1 && ` ${place + 1}`}{" "}
                      <select
                        value={own.ions[place] ?? ""}
                        onChange={({ currentTarget: { value } }) => {
                          const ions = Array.from({ length: many }, (_, at) =>
                            at === place ? value : (own.ions[at] ?? ""),
                          );
                          set(sample, kind, { ...own, ions });
                        }}
                      >
                        <option value="">{say.CHOOSE}</option>
                        {table.paper[kind].map((ion) => (
                          <option key={ion} value={ion}>
                            {plain(withName(ion, props.names))}
                          </option>
                        ))}
                        <option value={OPEN}>{say.LEFT_OPEN}</option>
                      </select>
                    </label>
                  ))}
                  <fieldset class="proved-by">
                    <legend class="small">{say.PROVED_BY}</legend>
                    {props.tests.map(({ id }, c) =>
                      seen[c] ? (
                        <label key={id}>
                          <input
                            type="checkbox"
                            checked={own.because.includes(id)}
                            aria-label={say.ionProvedBy(what, sample, id)}
                            onChange={({ currentTarget: { checked } }) =>
                              set(sample, kind, {
                                ...own,
                                because: checked ? [...own.because, id] : own.because.filter((one) => one !== id),
                              })
                            }
                          />{" "}
                          {id}
                        </label>
                      ) : null,
                    )}
                  </fieldset>
                </div>
              );
            })}
          </fieldset>
        ))}
        <p class="small soft">{say.AS_FEW}</p>
        <p>
          <button type="submit" class="main">
            {say.MARK_ALL}
          </button>
        </p>
      </form>
    </section>
  );
}

/** What the reader wrote, to conclude from. */
function OwnRecord({
  tests,
  unknowns,
  session,
}: Pick<Props, "unknowns" | "session"> & { tests: PracticeProps["tests"] }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable with the keyboard
    <section class="scroll" aria-label={say.OWN_RECORD} tabIndex={0}>
      <table class="record">
        <thead>
          <tr>
            <th scope="col">{say.TEST}</th>
            {unknowns.map(({ sample }) => (
              <th scope="col" key={sample}>
                {sample}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {tests.map(({ id, brief }, c) => (
            <tr key={id}>
              <th scope="row">
                {id}{" "}
                <span class="soft">
                  <Words of={brief} />
                </span>
              </th>
              {unknowns.map(({ sample, seen }) => (
                <td key={sample} data-head={sample}>
                  {seen[c] ? session.lines[id]?.[sample]?.trim() || say.NOTHING_WRITTEN : say.NOT_DONE}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
