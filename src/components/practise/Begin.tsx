/** The number of the set: typed, or a new one. */
import { useState } from "preact/hooks";
import type { Session } from "./kept.ts";
import { newSeed, readSeed } from "./seed.ts";

interface Props {
  awake: boolean;
  /** What was wrong with the number in the address. */
  fault: string | undefined;
  /** The number in the address, where another practice is under way. */
  asked: number | undefined;
  underWay: Session | undefined;
  onBegin(seed: number): void;
  onGoOn(session: Session): void;
}

export function Begin({ awake, fault, asked, underWay, onBegin, onGoOn }: Props) {
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
      {underWay && (
        <p class="tools">
          <span>A practice with set {underWay.seed} is under way.</span>
          <button type="button" onClick={() => onGoOn(underWay)}>
            Go on with set {underWay.seed}
          </button>
          {asked !== undefined && (
            <button type="button" onClick={() => onBegin(asked)}>
              Give it up and begin set {asked}
            </button>
          )}
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
