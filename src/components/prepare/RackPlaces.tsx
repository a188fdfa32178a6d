/** The rack from above: where each tube stands, the front row first. */
import { HOW_ROWS_ARE_READ, ROWS, THEN } from "#words/bench-plan.ts";
import type { RackRow } from "../../engine/planning/rack-places.ts";

interface Props {
  rows: readonly RackRow[];
  /** What stands under a label, line by line: fill marks on a bench card. */
  under?: (label: string) => readonly string[];
  /** It is said how the rows are to be read. */
  told?: boolean;
}

export function RackPlaces({ rows, under, told = false }: Props) {
  return (
    <>
      {told && <p class="small soft">{HOW_ROWS_ARE_READ}</p>}
      {rows.map(({ kind, places }) => (
        <div class="row" key={places[0][0]}>
          <p>{ROWS[kind]}</p>
          <ol class="places">
            {places.map((labels) => (
              <li key={labels[0]}>
                <b>{labels.join(THEN)}</b>
                {under?.(labels[0]).map((line) => (
                  <span key={line}>{line}</span>
                ))}
              </li>
            ))}
          </ol>
        </div>
      ))}
    </>
  );
}
