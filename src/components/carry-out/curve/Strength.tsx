import * as say from "#words/curves.ts";
import type { StrengthRange } from "../../../build/live-curves.ts";
import { figures } from "../../figures.ts";
import { plain } from "../../sentence.ts";
import { stopsApart } from "./typed-strength.ts";

interface Props {
  id: string;
  /** What is this strong: "sample R". */
  of: string;
  range: StrengthRange;
  /** As typed. */
  text: string;
  /** Last strength that could be read, mol/dm3. */
  value: number;
  fault: string | undefined;
  awake: boolean;
  onType(text: string): void;
  /** The reader has done typing. */
  onDone(): void;
}

/** The strength of a solution: typed as a figure, or slid to. */
export function Strength({ id, of, range, text, value, fault, awake, onType, onDone }: Props) {
  return (
    <div class="strength">
      <label for={id}>{say.strengthOf(of)}</label>
      <div>
        <input
          id={id}
          type="text"
          inputmode="decimal"
          autocomplete="off"
          disabled={!awake}
          value={text}
          aria-invalid={fault !== undefined}
          aria-describedby={`${id}-fault`}
          onInput={({ currentTarget }) => onType(currentTarget.value)}
          onChange={onDone}
        />
        <input
          type="range"
          aria-label={say.slider(of)}
          aria-valuetext={`${figures(value)} mol/dm³`}
          autocomplete="off"
          disabled={!awake}
          min={range.from}
          max={range.to}
          step={stopsApart(range)}
          value={value}
          onInput={({ currentTarget }) => onType(figures(Number(currentTarget.value)))}
        />
      </div>
      <p id={`${id}-fault`} class="small clash" aria-live="polite">
        {fault && say.faultStays(plain(fault))}
      </p>
    </div>
  );
}
