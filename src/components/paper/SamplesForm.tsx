/** What is given: the samples. */
import { MOST } from "../../engine/practical/bounds.ts";
import { type Draft, type DraftSample, emptySample, freeLetter, renamed } from "./draft.ts";
import { Choice, Fault, type Faults, Field, placeId } from "./fields.tsx";
import type { Editing } from "./use-draft.ts";

const GIVEN = [
  ["solution", "a solution"],
  ["solid", "a solid"],
  ["both", "a solid and its solution"],
] as const;
const COUNTS = [
  ["1", "one"],
  ["2", "two"],
] as const;

export function SamplesForm({ draft, faults, edit, focus }: Editing & { draft: Draft; faults: Faults }) {
  const { samples } = draft;
  const set = (index: number, change: Partial<DraftSample>) =>
    edit({ ...draft, samples: samples.map((one, at) => (at === index ? { ...one, ...change } : one)) });
  return (
    <fieldset class="entry" id="samples" tabIndex={-1}>
      <legend>Samples</legend>
      {samples.map((one, index) => {
        const at = `samples.${index}`;
        const who = one.label || `number ${index + 1}`;
        return (
          <div class="row" key={index}>
            <Field
              name="Letter"
              says={`Letter of sample ${who}`}
              place={`${at}.label`}
              size={3}
              value={one.label}
              fault={faults(`${at}.label`)}
              onType={(label) => edit(renamed(draft, index, label.trim()))}
            />
            <Choice
              name="Given as"
              says={`Sample ${who} is given as`}
              place={`${at}.given`}
              value={one.given}
              of={GIVEN}
              fault={faults(`${at}.given`)}
              onChoose={(given) => set(index, { given: given as DraftSample["given"] })}
            />
            {one.given !== "solid" && (
              <Field
                name="Strength of the solution"
                says={`Strength of solution ${who}`}
                place={`${at}.concentration`}
                value={one.concentration}
                hint="0.1 mol/dm3"
                fault={faults(`${at}.concentration`)}
                onType={(concentration) => set(index, { concentration })}
              />
            )}
            <Choice
              name="Cations"
              says={`Cations in sample ${who}`}
              place={`${at}.holds.cations`}
              value={String(one.cations)}
              of={COUNTS}
              fault={faults(`${at}.holds`)}
              onChoose={(count) => set(index, { cations: Number(count) })}
            />
            <Choice
              name="Anions"
              says={`Anions in sample ${who}`}
              place={`${at}.holds.anions`}
              value={String(one.anions)}
              of={COUNTS}
              onChoose={(count) => set(index, { anions: Number(count) })}
            />
            {samples.length > 1 && (
              <button
                type="button"
                onClick={() => {
                  edit({ ...draft, samples: samples.filter((_, other) => other !== index) });
                  focus("samples");
                }}
              >
                Remove<span class="vh"> sample {who}</span>
              </button>
            )}
          </div>
        );
      })}
      <Fault id="samples-fault" of={faults("samples", true)} />
      <button
        type="button"
        disabled={samples.length >= MOST.samples}
        onClick={() => {
          const taken = samples.map(({ label }) => label);
          const last = samples.at(-1);
          const label = freeLetter("PQRSTUVWXYZABCDEFGHIJKLMNO", taken);
          edit({ ...draft, samples: [...samples, { ...(last ?? emptySample(label)), label }] });
          focus(placeId(`samples.${samples.length}.label`));
        }}
      >
        Add a sample
      </button>
    </fieldset>
  );
}
