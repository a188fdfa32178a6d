import { list } from "#words/language.ts";
import * as say from "#words/repeats.ts";
import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import type { Repeat } from "../../engine/deduction/conclusion.ts";
import { repetitionOf } from "../../engine/deduction/deduce.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import { Words } from "../Words.tsx";
import { lookFor, placeName, thenLeft, unlisted, unlistedFirst } from "./repeat-words.ts";

/** So many suggestions stand open, the rest folded: more would hide the first. */
const SHOWN = 3;

interface Props {
  table: PredictionTable;
  /** It fits nothing. */
  record: TableRecord;
}

/** What to repeat first when the record fits nothing: the smallest sets of observations that would bring it into agreement. */
export function Repeats({ table, record }: Props) {
  const found = unlessTooMuch(() => repetitionOf(table, record));
  if (!found) return <p class="soft">{say.TOO_MUCH}</p>;
  const { repeats, moreRepeats, contradiction } = found;
  if (contradiction !== undefined) {
    return (
      <p>
        <b class="clash">{say.CONTRADICTS}</b> <Words of={contradiction} />. {say.NO_MENDING}
      </p>
    );
  }
  const line = ({ places, leadsTo }: Repeat) => {
    const inTurn = unlistedFirst(places, record);
    return (
      <li key={places.map(placeName).join()}>
        <b>{list(inTurn.map(placeName))}</b>: <Words of={lookFor(table, inTurn)} />. {say.THEN}{" "}
        <Words of={thenLeft(table, leadsTo)} />.
      </li>
    );
  };
  const noneOfThem = unlisted(repeats, record);
  return (
    <>
      {noneOfThem.length > 0 && (
        <p>
          <b class="clash">{say.lookAgain(noneOfThem)}</b> {say.LOOK_AGAIN_ABOUT}
        </p>
      )}
      <p>
        <b class="clash">{say.FIRST}</b> {say.firstAbout(repeats.length > 1)}
      </p>
      <ul>{repeats.slice(0, SHOWN).map(line)}</ul>
      {repeats.length > SHOWN && (
        <details>
          <summary>{say.otherSets(repeats.length - SHOWN)}</summary>
          <ul>{repeats.slice(SHOWN).map(line)}</ul>
          {moreRepeats && <p>{say.MORE}</p>}
        </details>
      )}
    </>
  );
}
