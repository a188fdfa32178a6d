/** The number of the set: typed, or a new one. */
import { useState } from "preact/hooks";
import { newSeed, readSeed } from "./seed.ts";

interface Props {
  awake: boolean;
  /** What was wrong with the number in the address. */
  fault: string | undefined;
  onBegin(seed: number): void;
}

export function Begin({ awake, fault, onBegin }: Props) {
  const [typed, type] = useState("");
  const [wrong, refuse] = useState<string>();
  const said = wrong ?? fault;
  return (
    <form
      class="begin"
      onSubmit={(event) => {
        event.preventDefault();
        const seed = readSeed(typed);
        if (typeof seed === "string") refuse(seed);
        else onBegin(seed);
      }}
    >
      {said && (
        <p class="caution" role="alert" id="seed-fault">
          {said} Choose one below.
        </p>
      )}
      <p class="tools">
        <label>
          Number of the set{" "}
          <input
            type="text"
            inputMode="numeric"
            autocomplete="off"
            maxLength={20}
            size={8}
            disabled={!awake}
            value={typed}
            aria-invalid={said ? "true" : undefined}
            aria-describedby={said ? "seed-fault" : undefined}
            onInput={({ currentTarget }) => type(currentTarget.value)}
          />
        </label>
        <button type="submit" disabled={!awake}>
          Begin
        </button>
        <button type="button" disabled={!awake} onClick={() => onBegin(newSeed(Math.random))}>
          Begin with a new number
        </button>
      </p>
    </form>
  );
}
