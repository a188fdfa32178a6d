/** One set of unknowns: its salts, how near another answer comes, and on opening all that a teacher may want to know of it. */

import { useMemo, useState } from "preact/hooks";
import * as say from "#words/choose.ts";
import type { Unknowns } from "../../build/unknowns.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import type { Judged } from "../../engine/deduction/hardness.ts";
import { wordBorders, wordNearest } from "../conclude/certificate-words.ts";
import { Words } from "../Words.tsx";
import { wordAbout, wordHazards, wordSet } from "./set-words.ts";

interface Props {
  table: PredictionTable;
  of: Pick<Unknowns, "tests" | "hazards">;
  salts: number[];
  judged: Pick<Judged, "nearest" | "borders">;
  /** Worked out at once, as in the page that is built; otherwise when it is opened. */
  atOnce: boolean;
}

export function SetEntry({ table, of, salts, judged, atOnce }: Props) {
  const [opened, open] = useState(false);
  const about = useMemo(
    () => (atOnce || opened ? wordAbout(table, salts, of.tests) : []),
    [atOnce, opened, table, salts],
  );
  const hazards = wordHazards(table, salts, of.hazards);
  return (
    <>
      <b>
        <Words of={wordSet(table, salts)} />
      </b>
      <span class="meta">{`${wordNearest(judged.nearest)} ${wordBorders(judged.borders)}`}</span>
      <details onToggle={(event) => event.currentTarget.open && open(true)}>
        <summary>
          {say.MORE}
          <span class="vh"> {say.onSet(wordSet(table, salts))}</span>
        </summary>
        <ul>
          {about.map((words) => (
            <li key={words}>
              <Words of={words} />
            </li>
          ))}
        </ul>
        {hazards.length > 0 && (
          <div class="caution">
            <p>
              <b>{say.BEFORE_GIVING_OUT}</b>
            </p>
            <ul>
              {hazards.map((words) => (
                <li key={words}>
                  <Words of={words} />
                </li>
              ))}
            </ul>
          </div>
        )}
      </details>
    </>
  );
}
