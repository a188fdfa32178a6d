/** One step of a test: what is done, and how much or with what. */
import * as say from "#words/paper-form.ts";
import { gasTest } from "#words/steps.ts";
import type { Indicator } from "../../engine/constants/indicators.ts";
import type { WrittenStep } from "../../engine/constants/standard-tests.ts";
import type { GasTest } from "../../engine/practical.ts";
import { Choice, Fault, type Faults, Field, placeId } from "./fields.tsx";
import { type House, withReagent } from "./house.ts";
import {
  AMOUNTS,
  type AmountKey,
  amountKey,
  askOf,
  type Bottles,
  kindOf,
  STEP_KINDS,
  withAmount,
  withEntry,
} from "./step-kinds.ts";

/** What a step can name, from the engine's lists. */
export interface Vocabulary {
  bottles: Bottles;
  gasTests: readonly GasTest[];
  indicators: readonly Indicator[];
  house: House;
}

interface Props extends Vocabulary {
  step: WrittenStep;
  place: string;
  /** "step 2 of a(i)" for a listener. */
  called: string;
  faults: Faults;
  onChange(step: WrittenStep): void;
  onRemove(): void;
  /** Begins a line of the record here; absent where one begins already. */
  onBreak?: () => void;
}

const VERBS = Object.entries(say.STEPS);
const KEEP = Object.entries(say.KEEP);
const HEAT = Object.entries(say.HEAT);

const named = <T extends string>(all: readonly T[], name: (one: T) => string) =>
  all.map((one) => [one, name(one)] as const);

export function StepForm(props: Props) {
  const { step, place, called, faults, bottles, onChange, onRemove, onBreak } = props;
  const kind = kindOf(step);
  const ask = askOf(step, bottles);
  const wrong = ask ?? faults(place);
  return (
    <li class="step-row">
      <Choice
        name={<span class="vh">{say.doneIn(called)}</span>}
        place={`${place}.verb`}
        value={kind?.verb ?? ""}
        of={VERBS}
        onChoose={(verb) => {
          const next = STEP_KINDS.find((one) => one.verb === verb);
          if (next && next !== kind) onChange(next.fresh);
        }}
      />
      <Entries {...props} />
      <span class="step-tools">
        {onBreak && (
          <button type="button" onClick={onBreak}>
            {say.NEW_LINE}
            <span class="vh">, {called}</span>
          </button>
        )}
        <button type="button" onClick={onRemove}>
          {say.REMOVE}
          <span class="vh"> {called}</span>
        </button>
      </span>
      <Fault id={`${placeId(place)}-fault`} of={wrong} />
    </li>
  );
}

function Entries({ step, place, called, bottles, gasTests, indicators, house, onChange }: Props) {
  const text = (key: string, says: string, hint: string, size = 8) => (
    <Field
      name={<span class="vh">{says}</span>}
      place={`${place}.${key}`}
      value={String(step[key] ?? "")}
      hint={hint}
      size={size}
      onType={(typed) => onChange(withEntry(step, key, typed))}
    />
  );
  const choice = (
    key: string,
    says: string,
    of: readonly (readonly [string, string])[],
    chosen = (value: string) => withEntry(step, key, value),
  ) => (
    <Choice
      name={<span class="vh">{says}</span>}
      place={`${place}.${key}`}
      value={String(step[key] ?? "")}
      of={of}
      onChoose={(value) => onChange(chosen(value))}
    />
  );
  switch (kindOf(step)?.verb) {
    case "take":
      return text("take", say.ASKED.take(called), say.HINTS.take);
    case "add": {
      const key = amountKey(step);
      return (
        <>
          {choice("add", say.ASKED.reagent(called), bottles, (reagent) => withReagent(step, reagent, house))}
          <Choice
            name={<span class="vh">{say.ASKED.amount(called)}</span>}
            place={`${place}.amount`}
            value={key}
            of={AMOUNTS}
            onChoose={(value) => onChange(withAmount(step, value as AmountKey))}
          />
          {(key === "drops" || key === "pieces") && text(key, say.ASKED.count(key, called), "5", 3)}
          {key === "volume" && text(key, say.ASKED.volume(called), "1 cm3", 6)}
          {key !== "pieces" && text("at", say.ASKED.at(called), say.HINTS.strength, 12)}
        </>
      );
    }
    case "boil":
    case "stand": {
      const key = "boil" in step ? "boil" : "stand";
      return text(key, say.ASKED.time(called), "2 min", 6);
    }
    case "filter":
      return choice("filter", say.ASKED.filter(called), KEEP);
    case "heat":
      return choice("heat", say.ASKED.heat(called), HEAT);
    case "testGas":
      return choice("testGas", say.ASKED.testGas(called), named(gasTests, gasTest));
    case "indicator":
      return choice("indicator", say.ASKED.indicator(called), named(indicators, say.indicator));
    case "leadThrough":
      return (
        <label class="field">
          <input
            type="checkbox"
            autocomplete="off"
            checked={"until" in step}
            onChange={({ currentTarget: { checked } }) =>
              onChange({ leadThrough: "limewater", ...(checked && { until: "in excess" }) })
            }
          />{" "}
          {say.AS_LONG_AS_IT_COMES}
        </label>
      );
    default:
      return null;
  }
}
