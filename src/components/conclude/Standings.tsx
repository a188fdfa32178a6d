import * as say from "#words/conclude.ts";
import type { Agreement } from "../../engine/deduction/conclusion.ts";
import type { IonNames } from "../names.ts";
import { list } from "../sentence.ts";
import { Words } from "../Words.tsx";
import { sideBySide } from "./side-by-side.ts";

/** The samples side by side, how each ion stands in each: what the evidence below comes to, at a glance. */
export function Standings({ conclusion, names }: { conclusion: Agreement; names: IonNames }) {
  const { samples, assignments } = conclusion;
  const compared = sideBySide(samples, assignments);
  if (!compared) return null;
  const { rows, outOfAll } = compared;
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable with the keyboard */}
      <section class="scroll" aria-label={say.SIDE_BY_SIDE} tabIndex={0}>
        <table class="standings">
          <caption>{say.SIDE_BY_SIDE}</caption>
          <thead>
            <tr>
              <th scope="col">{say.ION}</th>
              {samples.map(({ sample }) => (
                <th scope="col" key={sample}>
                  {sample}
                </th>
              ))}
            </tr>
          </thead>
          {(["cation", "anion"] as const).map((kind) => (
            <tbody key={kind}>
              {rows[kind].map(({ ion, standings }) => (
                <tr key={ion}>
                  <th scope="row">
                    <Words of={ion} /> <span class="name">{names[ion]}</span>
                  </th>
                  {standings.map((standing, s) => (
                    <td key={samples[s].sample} class={standing}>
                      {say.STANDINGS[standing]}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          ))}
        </table>
      </section>
      {outOfAll.length > 0 && (
        <p class="small soft">
          {say.OUT_OF_ALL} <Words of={list(outOfAll)} />.
        </p>
      )}
    </>
  );
}
