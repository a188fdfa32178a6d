import { CHANGED, cellFor, ELSE, NOT_DONE, WAS } from "#words/record.ts";
import { SOMETHING_ELSE } from "../../engine/deduction/something-else.ts";
import { Words } from "../Words.tsx";
import { inWords } from "./in-words.ts";
import type { SheetLine } from "./record-sheet.ts";

interface Props {
  cell: SheetLine;
  sample: string;
  /** Reading recorded, or undefined when the test was not done. */
  reading: number | undefined;
  /** What stood here before anything was changed; undefined where nothing did. */
  before: number | undefined;
  /** A choice made now would be taken; until then the page carries only the option chosen. */
  awake: boolean;
  /** Besides the sights of its list a cell takes "something else". */
  takesElse?: boolean;
  onChange(reading: number | undefined): void;
}

/** One observation: its words in full, with a native select over them. */
export function Cell({ cell, sample, reading, before, awake, takesElse, onChange }: Props) {
  const changed = before !== undefined && reading !== before;
  return (
    <>
      <span class={changed ? "cell changed" : "cell"}>
        <span aria-hidden="true">
          <Words of={inWords(cell, reading)} />
        </span>
        {/* Values are text: the number 0 and the empty text would count as equal, and "not done" be chosen in the page as built. */}
        {/* A browser that fills in what it remembers of a form would show one record and keep another. */}
        <select
          aria-label={cellFor(cell.id, sample)}
          autocomplete="off"
          disabled={!awake}
          value={String(reading ?? "")}
          onChange={({ currentTarget: { value } }) => onChange(value === "" ? undefined : Number(value))}
        >
          {cell.words.map(
            (text, index) =>
              (awake || index === reading) && (
                <option key={text} value={String(index)}>
                  {text}
                </option>
              ),
          )}
          {(reading === SOMETHING_ELSE || (awake && takesElse)) && (
            <option value={String(SOMETHING_ELSE)}>{ELSE}</option>
          )}
          {(awake || reading === undefined) && <option value="">{NOT_DONE}</option>}
        </select>
      </span>
      {changed && (
        <span class="was">
          <b>{CHANGED}</b>
          {WAS} <Words of={inWords(cell, before)} />
        </span>
      )}
    </>
  );
}
