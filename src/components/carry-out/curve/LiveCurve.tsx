/** Where an ion is while a reagent is added: the picture, its key, what it shows in words and figures, and what a reader may change in it. */
import { useState } from "preact/hooks";
import * as say from "#words/curves.ts";
import type { LiveCurve as Live } from "../../../build/live-curves.ts";
import { useAwake } from "../../awake.ts";
import { plain } from "../../sentence.ts";
import { Words } from "../../Words.tsx";
import { CurveFigures } from "./CurveFigures.tsx";
import { CurvePlot } from "./CurvePlot.tsx";
import { CurveKey, CurveStory } from "./CurveStory.tsx";
import { curveTitle, madeUpOf } from "./curve-words.ts";
import { LookAlong } from "./LookAlong.tsx";
import { unitFor } from "./plot-lines.ts";
import { dropsDrawn } from "./read-out.ts";
import { Strength } from "./Strength.tsx";
import { type Field, useLiveCurve } from "./use-live-curve.ts";

interface Props {
  /** A LiveCurve as JSON: as a property of an island a list of numbers would weigh three times as much. */
  of: string;
  id: string;
  /** Volume of a drop, cm3. */
  drop: number;
}

export default function LiveCurve({ of, id, drop }: Props) {
  const [live] = useState((): Live => JSON.parse(of));
  const { own, salts, source, reagent } = live;
  const awake = useAwake();
  const state = useLiveCurve(live, id);
  const { curve, wanted } = state;
  const [looking, look] = useState(0);
  const most = dropsDrawn(curve, drop);
  const drops = Math.min(looking, most);
  const drawnFor = madeUpOf(state.change, reagent.name);
  const strengths: [Field, string][] = [
    ["molPerDm3", say.ofSample(source.sample)],
    ["reagentMolPerDm3", reagent.name],
  ];
  return (
    <figure class="curve" id={id} aria-busy={state.working}>
      <h2>
        <Words of={curveTitle(curve, reagent.name)} />
      </h2>
      <p class="small soft">
        {say.DRAWN_FOR} <Words of={drawnFor} />.
      </p>
      <CurvePlot
        of={curve}
        id={id}
        reagent={reagent.name}
        drop={drop}
        unit={unitFor(Math.max(...live.curve.total))}
        at={drops * drop}
        onPoint={(cm3) => look(Math.min(Math.max(0, Math.round(cm3 / drop)), most))}
      />
      <LookAlong of={curve} reagent={reagent.name} drop={drop} drops={drops} awake={awake} onLook={look} />
      <CurveKey of={curve} />
      <fieldset class="try screen">
        <legend>
          {say.CHANGE}
          <span class="vh">{say.curveOf(source.sample)}</span>
        </legend>
        {strengths.map(([field, what]) => {
          const range = state.ranges[field];
          return (
            range && (
              <Strength
                key={field}
                id={`${id}-${field}`}
                of={what}
                range={range}
                text={state.texts[field]}
                value={wanted[field] ?? range.from}
                fault={state.faults[field]}
                awake={awake}
                onType={(text) => state.type(field, text)}
                onDone={() => state.judge(field)}
              />
            )
          );
        })}
        <label>
          {say.saltIn(source.sample)}{" "}
          <select
            autocomplete="off"
            disabled={!awake}
            value={wanted.salt}
            onChange={({ currentTarget: { value } }) => state.choose(value)}
          >
            {salts.map(
              ({ formula, name }) =>
                (awake || formula === own.salt) && (
                  <option key={formula} value={formula}>
                    {name}, {plain(formula)}
                    {formula === own.salt && say.OWN}
                  </option>
                ),
            )}
          </select>
        </label>
        <p class="back">
          <button type="button" disabled={!awake || !state.changed} onClick={state.reset}>
            {say.BACK_TO_OWN}
          </button>{" "}
          {state.working && <span class="small soft working">{say.WORKING}</span>}
        </p>
      </fieldset>
      <div class="screen" aria-live="polite">
        {state.refused && (
          <p class="small clash">
            <Words of={say.notDrawn(state.refused, drawnFor)} />
          </p>
        )}
      </div>
      <p class="vh" aria-live="polite">
        {state.news}
      </p>
      <figcaption>
        <CurveStory of={curve} reagent={reagent.name} drop={drop} />
        <CurveFigures of={curve} drop={drop} />
      </figcaption>
    </figure>
  );
}
