import type { TableCell } from "../../engine/bench/prediction-table.ts";
import { Words } from "../Words.tsx";

const NOT_DONE = "not done";

interface Props {
  cell: TableCell;
  sample: string;
  /** Reading recorded, or undefined when the test was not done. */
  reading: number | undefined;
  /** What the walkthrough recorded. */
  given: number | undefined;
  onChange(reading: number | undefined): void;
}

/** One observation: its words in full, with a native select over them. */
export function Cell({ cell, sample, reading, given, onChange }: Props) {
  const words = (at: number | undefined) => (at === undefined ? NOT_DONE : cell.words[at]);
  const changed = reading !== given;
  return (
    <>
      <span class={changed ? "cell changed" : "cell"}>
        <span aria-hidden="true">
          <Words of={words(reading)} />
        </span>
        <select
          aria-label={`${cell.id} for ${sample}`}
          value={reading ?? ""}
          onChange={({ currentTarget: { value } }) => onChange(value === "" ? undefined : Number(value))}
        >
          {cell.words.map((text, index) => (
            <option key={text} value={index}>
              {text}
            </option>
          ))}
          <option value="">{NOT_DONE}</option>
        </select>
      </span>
      {changed && (
        <span class="was">
          <b>changed</b>, was: <Words of={words(given)} />
        </span>
      )}
    </>
  );
}
