/** The rack from above: where each tube stands, the front row first. */
import type { RackRow } from "../../engine/planning/rack-places.ts";
import { capital } from "../capital.ts";

interface Props {
  rows: readonly RackRow[];
  /** What stands under a label, line by line: fill marks on a bench card. */
  under?: (label: string) => readonly string[];
}

export function RackPlaces({ rows, under }: Props) {
  return (
    <>
      {rows.map(({ kind, places }) => (
        <div class="row" key={places[0][0]}>
          <p>{capital(kind)}</p>
          <ol class="places">
            {places.map((labels) => (
              <li key={labels[0]}>
                <b>{labels.join(", then ")}</b>
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
