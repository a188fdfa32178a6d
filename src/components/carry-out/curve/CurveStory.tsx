import * as say from "#words/curves.ts";
import type { NamedCurve } from "../../../engine/bench/named-curve.ts";
import { spokenEquation } from "../../../engine/formula/spoken-equation.ts";
import { equationToHtml } from "../../../engine/formula/typeset-equation.ts";
import { Words } from "../../Words.tsx";
import { speciesName, tellCurve, volume } from "./curve-words.ts";
import { drawnTo, stylesOf } from "./plot-lines.ts";

/** A whole equation on a line of its own. */
function Line({ of }: { of: string }) {
  const html = equationToHtml(of).replace("→", '<span class="arrow">→</span>');
  return (
    <span
      class="equation formula-line"
      role="math"
      aria-label={spokenEquation(of)}
      dangerouslySetInnerHTML={{ __html: html }}
    />
  );
}

/** The key to the lines of a curve. */
export function CurveKey({ of: { series } }: { of: NamedCurve }) {
  const styles = stylesOf(series);
  return (
    <ul class="key">
      {series.map((one, n) => (
        <li key={one.id}>
          <svg viewBox="0 0 56 14" aria-hidden="true">
            <path class={styles[n]} d="M0 7H56" />
          </svg>{" "}
          <Words of={`${speciesName(one)}, ${say.KINDS[one.kind]}`} />
        </li>
      ))}
    </ul>
  );
}

/** What a curve shows, in sentences and equations. */
export function CurveStory({ of: curve, reagent, drop }: { of: NamedCurve; reagent: string; drop: number }) {
  const drawn = drawnTo(curve);
  const all = curve.ends[curve.ends.length - 1].x;
  return (
    <>
      {tellCurve(curve, reagent, drop).map(({ says, equation }) => (
        <p key={says}>
          <Words of={says} />
          {equation && <Line of={equation} />}
        </p>
      ))}
      {drawn < all && (
        <p class="soft">
          <Words of={say.flat(volume(drawn), volume(all))} />
        </p>
      )}
    </>
  );
}
