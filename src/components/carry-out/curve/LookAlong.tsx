import { look, SLIDE } from "#words/curves.ts";
import type { NamedCurve } from "../../../engine/bench/named-curve.ts";
import { plain } from "../../sentence.ts";
import { Words } from "../../Words.tsx";
import { dropsDrawn, readOut } from "./read-out.ts";

interface Props {
  of: NamedCurve;
  /** Name of the reagent. */
  reagent: string;
  /** Volume of a drop, cm3. */
  drop: number;
  drops: number;
  awake: boolean;
  onLook(drops: number): void;
}

/** A slider under the axis that moves drop by drop and says where the ion is; its words are spoken as its value. */
export function LookAlong({ of: curve, reagent, drop, drops, awake, onLook }: Props) {
  const words = readOut(curve, drops, drop);
  return (
    <div class="look screen">
      <input
        type="range"
        aria-label={look(reagent)}
        aria-valuetext={plain(words)}
        autocomplete="off"
        disabled={!awake}
        min={0}
        max={dropsDrawn(curve, drop)}
        step={1}
        value={drops}
        onInput={({ currentTarget }) => onLook(Number(currentTarget.value))}
      />
      {/* Spoken as the value of the slider; said here again it would come twice. */}
      <p aria-hidden="true">
        <Words of={words} />
        {drops === 0 && <span class="soft">{SLIDE}</span>}
      </p>
    </div>
  );
}
