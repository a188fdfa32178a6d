/** The number of the set: typed, or a new one. */
import { useState } from "preact/hooks";
import * as say from "#words/practise.ts";
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
          {said} {say.CHOOSE_BELOW}
        </p>
      )}
      {underWay && (
        <p class="tools">
          <span>{say.underWay(underWay.seed)}</span>
          <button type="button" onClick={() => onGoOn(underWay)}>
            {say.goOn(underWay.seed)}
          </button>
          {asked !== undefined && (
            <button type="button" onClick={() => onBegin(asked)}>
              {say.giveUpFor(asked)}
            </button>
          )}
        </p>
      )}
      <p class="tools">
        <label>
          {say.NUMBER}{" "}
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
          {say.BEGIN}
        </button>
        <button type="button" disabled={!awake} onClick={() => onBegin(newSeed(Math.random))}>
          {say.BEGIN_NEW}
        </button>
      </p>
    </form>
  );
}
