/** The sets of unknowns to choose from, by how hard they are. */
import * as say from "#words/choose.ts";
import type { Unknowns } from "../../build/unknowns.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import { BOUNDS, type Choice, chooseUnknowns } from "../../engine/deduction/choose-unknowns.ts";
import { STANDINGS, type Standing } from "../../engine/deduction/hardness.ts";
import { forSamples } from "../../engine/deduction/other-samples.ts";
import { capital } from "../capital.ts";
import { plain } from "../sentence.ts";
import type { Chosen } from "./choice-address.ts";
import { SetEntry } from "./SetEntry.tsx";
import { wordCount, wordTerms } from "./set-words.ts";

/** Sets shown of each kind. */
const LISTED = 6;

export interface Found {
  /** For the number of samples chosen. */
  table: PredictionTable;
  choice: Choice;
  /** How many sets there are, in a sentence. */
  count: string;
}

/** What there is to choose from. */
export function setsFor({ table: own }: Unknowns, { store, samples }: Chosen): Found {
  const table = forSamples(own, samples);
  const choice = chooseUnknowns(table, store, { ...BOUNDS, listed: LISTED });
  return { table, choice, count: plain(wordCount(choice)) };
}

interface Props {
  of: Unknowns;
  found: Found;
  show: Standing | "all";
  /** All that is said of the sets is worked out at once; otherwise of each when it is opened. */
  atOnce: boolean;
}

export function Sets({ of, found: { table, choice }, show, atOnce }: Props) {
  const isOwn = table.samples.length === of.table.samples.length;
  return (
    <>
      <p class="small soft">{plain([...(isOwn ? [] : [say.OTHER_NUMBER]), ...wordTerms(table)].join(" "))}</p>
      {STANDINGS.filter((standing) => show === "all" || show === standing).map((standing) => {
        const named = choice.sets[standing];
        const all = choice.found[standing];
        return (
          <section key={standing} aria-labelledby={`sets-${standing}`}>
            <h3 id={`sets-${standing}`}>
              {capital(say.STANDINGS[standing])}{" "}
              <span class="soft">{all > named.length ? say.someOf(named.length, all) : all}</span>
            </h3>
            <ol class="list sets">
              {named.map((one) => (
                <li key={one.salts.join()}>
                  <SetEntry table={table} of={of} salts={one.salts} judged={one} atOnce={atOnce} />
                </li>
              ))}
            </ol>
          </section>
        );
      })}
    </>
  );
}
