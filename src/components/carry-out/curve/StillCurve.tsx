import { DRAWN_FOR } from "#words/curves.ts";
import type { NamedCurve } from "../../../engine/bench/named-curve.ts";
import { Words } from "../../Words.tsx";
import { CurveFigures } from "./CurveFigures.tsx";
import { CurvePlot } from "./CurvePlot.tsx";
import { CurveKey, CurveStory } from "./CurveStory.tsx";
import { curveTitle } from "./curve-words.ts";
import { unitFor } from "./plot-lines.ts";

interface Props {
  of: NamedCurve;
  id: string;
  /** Name of the reagent. */
  reagent: string;
  /** What it is drawn for, mhchem: "0.1 mol/dm3 Zn(NO3)2". */
  drawnFor: string;
  /** Volume of a drop, cm3. */
  drop: number;
}

/** A curve as it is printed: nothing to change in it, and no script. */
export function StillCurve({ of: curve, id, reagent, drawnFor, drop }: Props) {
  return (
    <figure class="curve" id={id}>
      <h3>
        <Words of={curveTitle(curve, reagent)} />
      </h3>
      <p class="small soft">
        {DRAWN_FOR} <Words of={drawnFor} />.
      </p>
      <CurvePlot
        of={curve}
        id={id}
        reagent={reagent}
        drop={drop}
        unit={unitFor(Math.max(...curve.total))}
        at={0}
        onPoint={() => {}}
      />
      <CurveKey of={curve} />
      <figcaption>
        <CurveStory of={curve} reagent={reagent} drop={drop} />
        <CurveFigures of={curve} drop={drop} />
      </figcaption>
    </figure>
  );
}
