/** The fields of the form. Each has its name, and under it what is wrong with what stands in it. */

import type { ComponentChildren } from "preact";
import * as say from "#words/paper-form.ts";
import type { PracticalFault } from "../../engine/practical/faults.ts";

/** What the schema says, by place: `samples.0.concentration`. */
export type Faults = (place: string, exactly?: boolean) => string | undefined;

/** "found x, expected y" as a sentence of its own. */
const sentence = (message: string) =>
  `${message.charAt(0).toUpperCase()}${message.slice(1)}${/[.?!]$/.test(message) ? "" : "."}`;

/** Looks faults up by the place they concern, or by a place around it. */
export const faultsBy =
  (all: readonly PracticalFault[]): Faults =>
  (place, exactly = false) => {
    const found = all.find(({ path }) => {
      const at = path.join(".");
      return at === place || (!exactly && at.startsWith(`${place}.`));
    });
    return found && sentence(found.message);
  };

export const placeId = (place: string) => `f-${place.replace(/[^\w]+/g, "-")}`;

export function Fault({ id, of }: { id: string; of: string | undefined }) {
  return of === undefined ? null : (
    <p class="fault" id={id}>
      <b>{say.TO_DO}</b> {of}
    </p>
  );
}

interface FieldProps {
  name: ComponentChildren;
  /** Place in the written paper. */
  place: string;
  value: string;
  fault?: string;
  size?: number;
  hint?: string;
  hidden?: boolean;
  /** What a listener hears where the name beside the field is short. */
  says?: string;
  onType(text: string): void;
}

/** A line of text. */
export function Field({ name, place, value, fault, size = 14, hint, says, onType }: FieldProps) {
  const id = placeId(place);
  return (
    <span class="field">
      <label for={id}>{name}</label>
      <input
        id={id}
        type="text"
        size={size}
        maxLength={200}
        autocomplete="off"
        autocapitalize="none"
        spellcheck={false}
        placeholder={hint}
        aria-label={says}
        value={value}
        aria-invalid={fault !== undefined}
        aria-describedby={fault === undefined ? undefined : `${id}-fault`}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      <Fault id={`${id}-fault`} of={fault} />
    </span>
  );
}

interface ChoiceProps {
  name: ComponentChildren;
  place: string;
  value: string;
  of: readonly (readonly [value: string, words: string])[];
  fault?: string;
  says?: string;
  onChoose(value: string): void;
}

/** One of a list. What stands there and is not on the list is kept, and shown. */
export function Choice({ name, place, value, of, fault, says, onChoose }: ChoiceProps) {
  const id = placeId(place);
  const known = of.some(([one]) => one === value);
  return (
    <span class="field">
      <label for={id}>{name}</label>
      <select
        id={id}
        autocomplete="off"
        aria-label={says}
        value={value}
        aria-invalid={fault !== undefined}
        aria-describedby={fault === undefined ? undefined : `${id}-fault`}
        onChange={(event) => onChoose(event.currentTarget.value)}
      >
        {!known && <option value={value}>{value === "" ? say.CHOOSE : value}</option>}
        {of.map(([one, words]) => (
          <option key={one} value={one}>
            {words}
          </option>
        ))}
      </select>
      <Fault id={`${id}-fault`} of={fault} />
    </span>
  );
}

interface LettersProps {
  name: string;
  place: string;
  letters: readonly string[];
  chosen: readonly string[];
  fault?: string;
  onChoose(letters: string[]): void;
}

/** Some of the samples. */
export function Letters({ name, place, letters, chosen, fault, onChoose }: LettersProps) {
  const id = placeId(place);
  const all = [...new Set([...letters, ...chosen])].filter((letter) => letter !== "");
  return (
    <fieldset class="letters" id={id} tabIndex={-1} aria-describedby={fault === undefined ? undefined : `${id}-fault`}>
      <legend>{name}</legend>
      {all.map((letter) => (
        <label key={letter}>
          <input
            type="checkbox"
            autocomplete="off"
            checked={chosen.includes(letter)}
            onChange={({ currentTarget: { checked } }) =>
              onChoose(all.filter((one) => (one === letter ? checked : chosen.includes(one))))
            }
          />{" "}
          {letter}
          {!letters.includes(letter) && ` ${say.NO_SUCH_SAMPLE}`}
        </label>
      ))}
      <Fault id={`${id}-fault`} of={fault} />
    </fieldset>
  );
}
