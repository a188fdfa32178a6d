import type { PredictionTable, TableRecord } from "../../engine/bench/prediction-table.ts";
import type { Repeat } from "../../engine/deduction/conclusion.ts";
import { repetitionOf } from "../../engine/deduction/deduce.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import { list } from "../sentence.ts";
import { Words } from "../Words.tsx";
import { lookFor, placeName, thenLeft, unlisted, unlistedFirst } from "./repeat-words.ts";

/** So many suggestions stand open, the rest folded: more would hide the first. */
const SHOWN = 3;

const TOO_MUCH =
  "So much is recorded and said of the samples at once that what to repeat first cannot be worked out here.";

interface Props {
  table: PredictionTable;
  /** It fits nothing. */
  record: TableRecord;
}

/** What to repeat first when the record fits nothing: the smallest sets of observations that would bring it into agreement. */
export function Repeats({ table, record }: Props) {
  const found = unlessTooMuch(() => repetitionOf(table, record));
  if (!found) return <p class="soft">{TOO_MUCH}</p>;
  const { repeats, moreRepeats, contradiction } = found;
  if (contradiction !== undefined) {
    return (
      <p>
        <b class="clash">The paper contradicts itself:</b> <Words of={contradiction} />. No observation can mend that.
      </p>
    );
  }
  const line = ({ places, leadsTo }: Repeat) => {
    const inTurn = unlistedFirst(places, record);
    return (
      <li key={places.map(placeName).join()}>
        <b>{list(inTurn.map(placeName))}</b>: <Words of={lookFor(table, inTurn)} />. Then{" "}
        <Words of={thenLeft(table, leadsTo)} />.
      </li>
    );
  };
  const noneOfThem = unlisted(repeats, record);
  return (
    <>
      {noneOfThem.length > 0 && (
        <p>
          <b class="clash">Look again at {list(noneOfThem)}:</b> no salt the paper allows is predicted to show anything
          but the sights listed there. If a clean tube shows the same again, tell your teacher: the sample may hold an
          ion the paper does not name.
        </p>
      )}
      <p>
        <b class="clash">Repeat first.</b> All the rest agrees once this is set aside
        {repeats.length > 1 && ", what is most easily misread first"}:
      </p>
      <ul>{repeats.slice(0, SHOWN).map(line)}</ul>
      {repeats.length > SHOWN && (
        <details>
          <summary>
            {repeats.length - SHOWN} other {repeats.length - SHOWN === 1 ? "set" : "sets"} of as few observations
          </summary>
          <ul>{repeats.slice(SHOWN).map(line)}</ul>
          {moreRepeats && <p>And more: with so many, repeat the tests from the start.</p>}
        </details>
      )}
    </>
  );
}
