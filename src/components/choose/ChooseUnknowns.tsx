/**
 * Choosing unknowns for a class: the salts in the store and the number of samples on one side, on the other the sets that the tests decide.
 * Built into the page for a school store's usual salts, so that it reads without script.
 */
import { useMemo, useState } from "preact/hooks";
import type { Unknowns } from "../../build/unknowns.ts";
import { BOUNDS, chooseUnknowns } from "../../engine/deduction/choose-unknowns.ts";
import { STANDINGS, type Standing } from "../../engine/deduction/hardness.ts";
import { forSamples } from "../../engine/deduction/other-samples.ts";
import { useAwake } from "../awake.ts";
import { capital } from "../capital.ts";
import type { IonNames } from "../names.ts";
import { plain } from "../sentence.ts";
import { SetEntry } from "./SetEntry.tsx";
import { Store } from "./Store.tsx";
import { OTHER_NUMBER, STANDING_WORDS, wordCount, wordTerms } from "./set-words.ts";
import { useChosen } from "./use-chosen.ts";

interface Props {
  /** Unknowns as JSON: as one string it takes a third of the space it would as separate properties. */
  of: string;
  /** Names of the ions the paper allows. */
  names: IonNames;
}

const MOST_SAMPLES = 8;
/** Sets shown of each kind. */
const LISTED = 6;

export default function ChooseUnknowns({ of: json, names }: Props) {
  const of = useMemo(() => JSON.parse(json) as Unknowns, [json]);
  const awake = useAwake();
  const own = of.table.samples.length;
  const [kind, show] = useState<Standing | "all">("all");
  const possible = useMemo(() => [...new Set(of.table.sets.flatMap(({ salts }) => salts))].sort((a, b) => a - b), [of]);
  const { store, samples, changed, faults, set } = useChosen(
    of.table,
    { store: of.store, samples: own },
    possible,
    MOST_SAMPLES,
  );
  const table = useMemo(() => forSamples(of.table, samples), [of, samples]);
  const choice = useMemo(() => chooseUnknowns(table, store, { ...BOUNDS, listed: LISTED }), [table, store]);
  const count = plain(wordCount(choice));

  return (
    <>
      <div class="find">
        <label>
          Samples
          <select
            disabled={!awake}
            value={samples}
            onChange={(event) => set({ store, samples: Number(event.currentTarget.value) })}
          >
            {Array.from({ length: MOST_SAMPLES }, (_, n) => n + 1).map((n) => (
              <option key={n} value={n}>
                {n === own ? `${n}, as the paper has it` : n}
              </option>
            ))}
          </select>
        </label>
        <label>
          Show
          <select
            disabled={!awake}
            value={kind}
            onChange={(event) => show(event.currentTarget.value as Standing | "all")}
          >
            <option value="all">all kinds</option>
            {STANDINGS.map((standing) => (
              <option key={standing} value={standing}>
                {STANDING_WORDS[standing]}
              </option>
            ))}
          </select>
        </label>
      </div>
      <Store
        table={table}
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
            <b>Part of the link could not be read.</b>
          </p>
          <ul>
            {faults.map((fault) => (
              <li key={fault}>{fault}</li>
            ))}
          </ul>
        </div>
      )}
      {changed && (
        <p class="small soft">The address of this page now holds your choice: copy it to keep or share it.</p>
      )}
      <h2>Sets to choose from</h2>
      <p class="small soft">{plain([...(samples === own ? [] : [OTHER_NUMBER]), ...wordTerms(table)].join(" "))}</p>
      <p aria-live="polite">{count}</p>
      {STANDINGS.filter((standing) => kind === "all" || kind === standing).map((standing) => {
        const named = choice.sets[standing];
        const found = choice.found[standing];
        return (
          <section key={standing} aria-labelledby={`sets-${standing}`}>
            <h3 id={`sets-${standing}`}>
              {capital(STANDING_WORDS[standing])}{" "}
              <span class="soft">{found > named.length ? `${named.length} of ${found}` : found}</span>
            </h3>
            <ol class="list sets">
              {named.map(({ salts, nearest }) => (
                <li key={salts.join()}>
                  <SetEntry table={table} of={of} salts={salts} nearest={nearest} atOnce={!changed} />
                </li>
              ))}
            </ol>
          </section>
        );
      })}
    </>
  );
}
