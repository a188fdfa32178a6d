/** What is given: the samples. */

import { useState } from "preact/hooks";
import * as say from "#words/paper-form.ts";
import { MOST } from "../../engine/practical/bounds.ts";
import { type Draft, type DraftSample, emptySample, freeLetter, renamed } from "./draft.ts";
import { Choice, Fault, type Faults, Field, placeId } from "./fields.tsx";
import { withoutSample } from "./remove-sample.ts";
import type { Editing } from "./use-draft.ts";

const GIVEN = Object.entries(say.GIVEN);
const COUNTS = Object.entries(say.COUNTS);

export function SamplesForm({ draft, faults, edit, focus }: Editing & { draft: Draft; faults: Faults }) {
  const { samples } = draft;
  /** Said until the paper changes again, for then a step back is another. */
  const [removed, tell] = useState<{ draft?: Draft; told: string }>({ told: "" });
  const set = (index: number, change: Partial<DraftSample>) =>
    edit({ ...draft, samples: samples.map((one, at) => (at === index ? { ...one, ...change } : one)) });
  return (
    <fieldset class="entry" id="samples" tabIndex={-1}>
      <legend>{say.SAMPLES}</legend>
      {samples.map((one, index) => {
        const at = `samples.${index}`;
        const who = one.label || say.numbered(index + 1);
        return (
          <div class="row" key={index}>
            <Field
              name={say.LETTER}
              says={say.letterOf(who)}
              place={`${at}.label`}
              size={3}
              value={one.label}
              fault={faults(`${at}.label`)}
              onType={(label) => edit(renamed(draft, index, label.trim()))}
            />
            <Choice
              name={say.GIVEN_AS}
              says={say.isGivenAs(who)}
              place={`${at}.given`}
              value={one.given}
              of={GIVEN}
              fault={faults(`${at}.given`)}
              onChoose={(given) => set(index, { given: given as DraftSample["given"] })}
            />
            {one.given !== "solid" && (
              <Field
                name={say.STRENGTH}
                says={say.strengthOf(who)}
                place={`${at}.concentration`}
                value={one.concentration}
                hint={say.USUAL_STRENGTH}
                fault={faults(`${at}.concentration`)}
                onType={(concentration) => set(index, { concentration })}
              />
            )}
            <Choice
              name={say.IONS.cations}
              says={say.ionsIn("cations", who)}
              place={`${at}.holds.cations`}
              value={String(one.cations)}
              of={COUNTS}
              fault={faults(`${at}.holds`)}
              onChoose={(count) => set(index, { cations: Number(count) })}
            />
            <Choice
              name={say.IONS.anions}
              says={say.ionsIn("anions", who)}
              place={`${at}.holds.anions`}
              value={String(one.anions)}
              of={COUNTS}
              onChoose={(count) => set(index, { anions: Number(count) })}
            />
            {samples.length > 1 && (
              <button
                type="button"
                onClick={() => {
                  const left = withoutSample(draft, index);
                  edit(left.draft);
                  tell(left);
                  focus("samples");
                }}
              >
                {say.REMOVE}
                <span class="vh"> {say.theSample(who)}</span>
              </button>
            )}
          </div>
        );
      })}
      {samples.some(({ given }) => given !== "solid") && <p class="small soft">{say.NO_STRENGTH}</p>}
      <p role="status">{removed.draft === draft && removed.told}</p>
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
        {say.ADD_SAMPLE}
      </button>
    </fieldset>
  );
}
