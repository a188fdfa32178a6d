/** The salts a teacher has, ticked one by one. */
import * as say from "#words/choose.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import { type IonNames, saltWords } from "../names.ts";
import { Words } from "../Words.tsx";

interface Props {
  salts: PredictionTable["salts"];
  names: IonNames;
  /** Salts (indices) that can be asked for. */
  possible: readonly number[];
  ticked: readonly number[];
  /** The salts of the school store's list. */
  usual: readonly number[];
  awake: boolean;
  onChange(ticked: number[]): void;
}

export function Store({ salts, names, possible, ticked, usual, awake, onChange }: Props) {
  const tick = (salt: number) =>
    onChange(possible.filter((one) => (one === salt ? !ticked.includes(one) : ticked.includes(one))));
  return (
    <fieldset class="store">
      <legend>{say.inStore(ticked.length, possible.length)}</legend>
      <div class="tools">
        <button type="button" disabled={!awake} onClick={() => onChange([...usual])}>
          {say.USUAL}
        </button>
        <button type="button" disabled={!awake} onClick={() => onChange([...possible])}>
          {say.ALL}
        </button>
        <button type="button" disabled={!awake} onClick={() => onChange([])}>
          {say.NONE}
        </button>
      </div>
      <ul>
        {possible.map((salt) => (
          <li key={salt}>
            <label>
              <input type="checkbox" checked={ticked.includes(salt)} disabled={!awake} onChange={() => tick(salt)} />
              <span>
                {saltWords(salts[salt], names)} <Words of={salts[salt].formula} />
              </span>
            </label>
          </li>
        ))}
      </ul>
    </fieldset>
  );
}
