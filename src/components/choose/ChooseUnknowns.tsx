/**
 * Choosing unknowns for a class: the salts in the store and the number of samples, and below them the sets that the tests decide. The sets
 * are built into the page for a school store's usual salts, so that it reads without script; what works them out anew is loaded when a
 * teacher first turns to the controls.
 */
import type { ComponentChildren } from "preact";
import { useEffect, useMemo, useState } from "preact/hooks";
import * as say from "#words/choose.ts";
import type { Unknowns } from "../../build/unknowns.ts";
import { STANDINGS, type Standing } from "../../engine/deduction/hardness.ts";
import { useAwake } from "../awake.ts";
import { useLater } from "../later.ts";
import type { IonNames } from "../names.ts";
import { Store } from "./Store.tsx";
import { useChosen } from "./use-chosen.ts";

interface Props {
  /** Unknowns as JSON: as one string it takes a third of the space it would as separate properties. */
  of: string;
  /** Names of the ions the paper allows. */
  names: IonNames;
  /** How many sets there are for the page as built, in a sentence. */
  count: string;
  /** These sets, as built into the page. */
  sets?: ComponentChildren;
}

const MOST_SAMPLES = 8;

export default function ChooseUnknowns({ of: json, names, count, sets }: Props) {
  const of = useMemo(() => JSON.parse(json) as Unknowns, [json]);
  const awake = useAwake();
  const own = of.table.samples.length;
  const [kind, show] = useState<Standing | "all">("all");
  const possible = useMemo(() => [...new Set(of.table.sets.flatMap(({ salts }) => salts))].sort((a, b) => a - b), [of]);
  const usual = { store: of.store, samples: own };
  const { store, samples, changed, faults, set } = useChosen(of.table, usual, possible, MOST_SAMPLES);
  const { module, failed, load } = useLater(() => import("./Sets.tsx"));
  const touched = changed || kind !== "all";
  // A link may bring another choice along before anything is touched.
  useEffect(() => {
    if (touched) load();
  }, [touched]);
  const found = useMemo(
    () => (touched ? module?.setsFor(of, { store, samples }) : undefined),
    [touched, module, of, store, samples],
  );

  return (
    <div onPointerOver={load} onFocusIn={load}>
      <div class="find">
        <label>
          {say.SAMPLES}
          <select
            disabled={!awake}
            value={samples}
            onChange={(event) => set({ store, samples: Number(event.currentTarget.value) })}
          >
            {Array.from({ length: MOST_SAMPLES }, (_, n) => n + 1).map((n) => (
              <option key={n} value={n}>
                {n === own ? say.asPaperHas(n) : n}
              </option>
            ))}
          </select>
        </label>
        <label>
          {say.SHOW}
          <select
            disabled={!awake}
            value={kind}
            onChange={(event) => show(event.currentTarget.value as Standing | "all")}
          >
            <option value="all">{say.ALL_KINDS}</option>
            {STANDINGS.map((standing) => (
              <option key={standing} value={standing}>
                {say.STANDINGS[standing]}
              </option>
            ))}
          </select>
        </label>
      </div>
      <Store
        salts={of.table.salts}
        names={names}
        possible={possible}
        ticked={store}
        usual={of.store}
        awake={awake}
        onChange={(ticked) => set({ store: ticked, samples })}
      />
      {faults.length > 0 && (
        <div class="caution" role="status">
          <p>
            <b>{say.UNREADABLE}</b>
          </p>
          <ul>
            {faults.map((fault) => (
              <li key={fault}>{fault}</li>
            ))}
          </ul>
        </div>
      )}
      {changed && <p class="small soft">{say.IN_ADDRESS}</p>}
      <h2>{say.SETS}</h2>
      <p aria-live="polite" class={touched && failed ? "caution" : undefined}>
        {!touched ? count : (found?.count ?? (failed ? say.NOT_LOADED : say.WORKING))}
      </p>
      {touched && module && found ? <module.Sets of={of} found={found} show={kind} atOnce={false} /> : sets}
    </div>
  );
}
