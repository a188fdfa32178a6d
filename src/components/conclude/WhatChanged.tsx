/** What a reader's changes to the walkthrough's record come to. */
import * as say from "#words/what-changed.ts";
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { unlessTooMuch } from "../../engine/deduction/work.ts";
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
      <h3 id="changed">{say.HEADING}</h3>
      <ul>
        {observations.slice(0, SHOWN).map(({ cell, sample, was, now }) => (
          <li key={cell + sample}>
            <b>{say.placeOf(cell, sample)}</b> {say.WAS} <Words of={was} />
            {say.NOW} <Words of={now} />.
          </li>
        ))}
        {more > 0 && <li>{say.moreMarked(more)}</li>}
      </ul>
      {samples.length > 0 && (
        <table class="stack">
          <thead>
            <tr>
              <th scope="col">{say.HEADS.sample}</th>
              <th scope="col">{say.HEADS.was}</th>
              <th scope="col">{say.HEADS.now}</th>
              <th scope="col">{say.HEADS.why}</th>
            </tr>
          </thead>
          <tbody>
            {samples.map(({ sample, was, now, why }) => (
              <tr key={sample}>
                <th scope="row">
                  <b>{sample}</b>
                </th>
                <td data-head={say.HEADS.was}>
                  <Words of={was} />
                </td>
                <td data-head={say.HEADS.now}>
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
      {waiting.length > 0 && <p>{say.notDecided(waiting)}</p>}
      {unchanged.length > 0 && <p class="soft">{samples.length === 0 ? say.AS_IT_WAS : say.asBefore(unchanged)}</p>}
    </section>
  );
}
