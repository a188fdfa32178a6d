/** What a reader's changes to the walkthrough's record come to. */
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
import { list } from "../sentence.ts";
import { Words } from "../Words.tsx";
import type { Recorded } from "./finding.ts";
import { whatChanged } from "./what-changed.ts";

/** So many changed observations are written out; the record marks them all. */
const SHOWN = 5;

/** @param given the walkthrough's record */
export function WhatChanged({ given, ...of }: Recorded & { given: TableRecord }) {
  const changed = unlessTooMuch(() => whatChanged(of, given));
  if (!changed) return null;
  const { observations, samples, waiting, unchanged } = changed;
  const more = observations.length - SHOWN;
  return (
    <section class="compared" aria-labelledby="changed">
      <h3 id="changed">What changed</h3>
      <ul>
        {observations.slice(0, SHOWN).map(({ cell, sample, was, now }) => (
          <li key={cell + sample}>
            <b>
              {cell} for {sample}
            </b>{" "}
            was: <Words of={was} />; now: <Words of={now} />.
          </li>
        ))}
        {more > 0 && <li>{more} more, each marked in the record.</li>}
      </ul>
      {samples.length > 0 && (
        <table class="stack">
          <thead>
            <tr>
              <th scope="col">Sample</th>
              <th scope="col">Walkthrough</th>
              <th scope="col">Now</th>
              <th scope="col">Why</th>
            </tr>
          </thead>
          <tbody>
            {samples.map(({ sample, was, now, why }) => (
              <tr key={sample}>
                <th scope="row">
                  <b>{sample}</b>
                </th>
                <td data-head="Walkthrough">
                  <Words of={was} />
                </td>
                <td data-head="Now">
                  <Words of={now} />
                </td>
                <td>
                  <Words of={why.join(" ")} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {waiting.length > 0 && <p>Not decided before the record agrees again: {list(waiting)}.</p>}
      {unchanged.length > 0 && (
        <p class="soft">
          {samples.length === 0 ? "The conclusion stays as it was." : `As before: ${list(unchanged)}.`}
        </p>
      )}
    </section>
  );
}
