import * as say from "#words/curves.ts";
import type { NamedCurve } from "../../../engine/bench/named-curve.ts";
import { figures } from "../../figures.ts";
import { plain } from "../../sentence.ts";
import { Words } from "../../Words.tsx";
import { placeOf } from "./curve-words.ts";
import { percent, rowsOf, shortName } from "./read-out.ts";

/** The figures behind a curve, every few drops. */
export function CurveFigures({ of: curve, drop }: { of: NamedCurve; drop: number }) {
  const rows = rowsOf(curve, drop);
  const place = plain(placeOf(curve));
  const hasOthers = rows.some(({ others }) => percent(others) !== "0 %");
  return (
    <details>
      <summary>
        {say.FIGURES}
        <span class="vh">{say.ofPlace(place)}</span>
      </summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable with the keyboard */}
      <section class="scroll" aria-label={say.figuresOf(place)} tabIndex={0}>
        <table class="figures">
          <caption>
            {say.PART_OF_THE} <Words of={curve.ionName} /> {say.IN_EACH}
          </caption>
          <thead>
            <tr>
              <th scope="col">{say.DROPS}</th>
              <th scope="col">cm³</th>
              {curve.series.map((one) => (
                <th scope="col" key={one.id}>
                  <Words of={shortName(one, curve.series)} />
                </th>
              ))}
              {hasOthers && <th scope="col">{say.OTHER}</th>}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ cm3, drops, parts, others }) => (
              <tr key={drops}>
                <th scope="row">{drops}</th>
                <td>{figures(Number(cm3.toFixed(2)))}</td>
                {curve.series.map((one, n) => (
                  <td key={one.id}>{percent(parts[n])}</td>
                ))}
                {hasOthers && <td>{percent(others)}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
