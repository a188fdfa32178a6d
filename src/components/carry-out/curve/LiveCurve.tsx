/** Where an ion is while a reagent is added: the picture, its key, what it shows in words and figures, and what a reader may change in it. */
import { useState } from "preact/hooks";
import type { LiveCurve as Live } from "../../../build/live-curves.ts";
import type { ChangedCurve, CurveChange } from "../../../engine/bench/changed-curve.ts";
import { useAwake } from "../../awake.ts";
import { plain } from "../../sentence.ts";
import { Words } from "../../Words.tsx";
import { CurveFigures } from "./CurveFigures.tsx";
import { CurvePlot } from "./CurvePlot.tsx";
import { CurveKey, CurveStory } from "./CurveStory.tsx";
import { curveTitle, madeUpOf } from "./curve-words.ts";
import { LookAlong } from "./LookAlong.tsx";
import { dropsDrawn } from "./read-out.ts";
import { Strength } from "./Strength.tsx";
import { readStrength } from "./typed-strength.ts";

type Field = "molPerDm3" | "reagentMolPerDm3";

/** The engine comes only now. */
async function askEngine(id: string, { source }: Live, change: CurveChange): Promise<ChangedCurve | undefined> {
  try {
    const { desk } = await import("./curve-desk.ts");
    return await desk.ask(id, source, change);
  } catch {
    return { refused: "the calculation could not be loaded, so look to the network and change something again" };
  }
}

const typed = (strength: number | undefined): string => (strength === undefined ? "" : String(strength));
const textsOf = (change: CurveChange): Record<Field, string> => ({
  molPerDm3: typed(change.molPerDm3),
  reagentMolPerDm3: typed(change.reagentMolPerDm3),
});

interface Props {
  /** A LiveCurve as JSON: a list of numbers weighs three times as much as a property of an island. */
  of: string;
  id: string;
  /** Volume of a drop, cm3. */
  drop: number;
}

export default function LiveCurve({ of, id, drop }: Props) {
  const [live] = useState((): Live => JSON.parse(of));
  const { own, salts, source, reagent } = live;
  const awake = useAwake();
  const [shown, show] = useState({ curve: live.curve, change: own });
  const [wanted, want] = useState(own);
  const [texts, write] = useState(textsOf(own));
  const [faults, blame] = useState<Partial<Record<Field, string>>>({});
  const [refused, refuse] = useState<string>();
  const [working, work] = useState(false);
  const [news, announce] = useState("");
  const [looking, look] = useState(0);
  /** Questions asked, and the last of them that needs no answer any more: it has one, or a later one has. */
  const [questions] = useState({ asked: 0, settled: 0 });

  const ranges: Record<Field, Live["sampleRange"]> = { molPerDm3: live.sampleRange, reagentMolPerDm3: reagent.range };
  const { curve } = shown;
  const drawnFor = madeUpOf(shown.change, reagent.name);
  const drops = Math.min(looking, dropsDrawn(curve, drop));
  const changed = JSON.stringify([wanted, texts]) !== JSON.stringify([own, textsOf(own)]) || refused !== undefined;

  const ask = async (change: CurveChange) => {
    want(change);
    const number = ++questions.asked;
    work(true);
    const found = await askEngine(id, live, change);
    if (number === questions.asked) work(false);
    if (!found || number <= questions.settled) return;
    questions.settled = number;
    if ("refused" in found) refuse(found.refused);
    else {
      refuse(undefined);
      show({ curve: found.curve, change });
      if (number === questions.asked) announce(plain(`Drawn for ${madeUpOf(change, reagent.name)}.`));
    }
  };

  const type = (field: Field, text: string) => {
    const range = ranges[field];
    const read = range && readStrength(text, range);
    write({ ...texts, [field]: text });
    blame({ ...faults, [field]: undefined });
    if (typeof read === "number" && read !== wanted[field]) ask({ ...wanted, [field]: read });
  };

  /** A half-typed figure is no fault: it is named when the reader leaves the field. */
  const judge = (field: Field) => {
    const range = ranges[field];
    const read = range && readStrength(texts[field], range);
    if (typeof read === "object") blame({ ...faults, [field]: read.fault });
  };

  const reset = () => {
    questions.settled = ++questions.asked;
    work(false);
    want(own);
    write(textsOf(own));
    blame({});
    refuse(undefined);
    show({ curve: live.curve, change: own });
    announce(plain(`Back to the paper's own: ${madeUpOf(own, reagent.name)}.`));
  };

  const strength = (field: Field, what: string) => {
    const range = ranges[field];
    return (
      range && (
        <Strength
          id={`${id}-${field}`}
          of={what}
          range={range}
          text={texts[field]}
          value={wanted[field] ?? range.from}
          fault={faults[field]}
          awake={awake}
          onType={(text) => type(field, text)}
          onDone={() => judge(field)}
        />
      )
    );
  };

  return (
    <figure class="curve" id={id} aria-busy={working}>
      <h2>
        <Words of={curveTitle(curve, reagent.name)} />
      </h2>
      <p class="small soft">
        Drawn for <Words of={drawnFor} />.
      </p>
      <CurvePlot
        of={curve}
        id={id}
        reagent={reagent.name}
        at={drops * drop}
        onPoint={(cm3) => look(Math.min(Math.max(0, Math.round(cm3 / drop)), dropsDrawn(curve, drop)))}
      />
      <LookAlong of={curve} reagent={reagent.name} drop={drop} drops={drops} awake={awake} onLook={look} />
      <fieldset class="try screen">
        <legend>
          Change it<span class="vh">: the curve of {source.sample}</span>
        </legend>
        {strength("molPerDm3", `sample ${source.sample}`)}
        {strength("reagentMolPerDm3", reagent.name)}
        <label>
          Salt in {source.sample}{" "}
          <select
            autocomplete="off"
            disabled={!awake}
            value={wanted.salt}
            onChange={({ currentTarget: { value } }) => ask({ ...wanted, salt: value })}
          >
            {salts.map(
              ({ formula, name }) =>
                (awake || formula === own.salt) && (
                  <option key={formula} value={formula}>
                    {name}, {plain(formula)}
                    {formula === own.salt && " (the paper's own)"}
                  </option>
                ),
            )}
          </select>
        </label>
        <p class="back">
          <button type="button" disabled={!awake || !changed} onClick={reset}>
            Back to the paper's own
          </button>{" "}
          {working && <span class="small soft working">Working it out…</span>}
        </p>
        <p class="small clash" aria-live="polite">
          {refused && <Words of={`Not drawn: ${refused}. The curve is still that of ${drawnFor}.`} />}
        </p>
        <p class="vh" aria-live="polite">
          {news}
        </p>
      </fieldset>
      <figcaption>
        <CurveKey of={curve} />
        <CurveStory of={curve} reagent={reagent.name} />
        <CurveFigures of={curve} drop={drop} />
      </figcaption>
    </figure>
  );
}
