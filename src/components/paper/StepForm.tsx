/** One step of a test: what is done, and how much or with what. */
import type { WrittenStep } from "../../engine/constants/standard-tests.ts";
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
  gasTests: readonly string[];
  indicators: readonly string[];
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

const same = (words: readonly string[]) => words.map((word) => [word, word] as const);
const VERBS = STEP_KINDS.map(({ verb, name }) => [verb, name] as const);

export function StepForm(props: Props) {
  const { step, place, called, faults, bottles, onChange, onRemove, onBreak } = props;
  const kind = kindOf(step);
  const ask = askOf(step, bottles);
  const wrong = ask ?? faults(place);
  return (
    <li class="step-row">
      <Choice
        name={<span class="vh">What is done in {called}</span>}
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
            New line from here<span class="vh">, {called}</span>
          </button>
        )}
        <button type="button" onClick={onRemove}>
          Remove<span class="vh"> {called}</span>
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
      return text("take", `How much is taken, ${called}`, "1 cm3 or 0.2 g");
    case "add": {
      const key = amountKey(step);
      return (
        <>
          {choice("add", `Reagent of ${called}`, bottles, (reagent) => withReagent(step, reagent, house))}
          <Choice
            name={<span class="vh">How the amount is said, {called}</span>}
            place={`${place}.amount`}
            value={key}
            of={AMOUNTS}
            onChoose={(value) => onChange(withAmount(step, value as AmountKey))}
          />
          {(key === "drops" || key === "pieces") && text(key, `How many ${key}, ${called}`, "5", 3)}
          {key === "volume" && text(key, `Volume, ${called}`, "1 cm3", 6)}
          {key !== "pieces" && text("at", `Strength, if the paper gives one, ${called}`, "usual strength", 12)}
        </>
      );
    }
    case "boil":
    case "stand": {
      const key = "boil" in step ? "boil" : "stand";
      return text(key, `For how long, ${called}`, "2 min", 6);
    }
    case "filter":
      return choice("filter", `What is kept, ${called}`, [
        ["filtrate", "keep the filtrate"],
        ["residue", "keep the residue"],
      ]);
    case "heat":
      return choice("heat", `How, ${called}`, same(["gently", "strongly"]));
    case "testGas":
      return choice("testGas", `With what, ${called}`, same(gasTests));
    case "indicator":
      return choice("indicator", `Which indicator, ${called}`, same(indicators));
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
          for as long as it comes
        </label>
      );
    default:
      return null;
  }
}
