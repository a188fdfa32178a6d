/** What is to be done: parts, tests and steps. */
import * as say from "#words/paper-form.ts";
import type { WrittenStep } from "../../engine/constants/standard-tests.ts";
import { MOST } from "../../engine/practical/bounds.ts";
import {
  type Draft,
  type DraftPart,
  type DraftTest,
  emptyPart,
  emptyTest,
  fitting,
  freeLetter,
  linesOf,
} from "./draft.ts";
import { Choice, Fault, type Faults, Field, Letters, placeId } from "./fields.tsx";
import { StepForm, type Vocabulary } from "./StepForm.tsx";
import type { Editing } from "./use-draft.ts";

const TAKEN = Object.entries(say.TAKEN);

export function ProcedureForm(props: Editing & Vocabulary & { draft: Draft; faults: Faults }) {
  const { draft, faults, edit, focus } = props;
  const { parts } = draft;
  const setPart = (p: number, change: Partial<DraftPart>) =>
    edit({ ...draft, parts: parts.map((one, at) => (at === p ? { ...one, ...change } : one)) });
  return (
    <fieldset class="entry" id="tests" tabIndex={-1}>
      <legend>{say.TESTS}</legend>
      {parts.length === 0 && <p class="soft">{say.NO_TEST}</p>}
      {parts.map((part, p) => (
        <Part
          key={p}
          {...props}
          part={part}
          p={p}
          set={(change) => setPart(p, change)}
          remove={() => {
            edit({ ...draft, parts: parts.filter((_, other) => other !== p) });
            focus("tests");
          }}
        />
      ))}
      <Fault id="parts-fault" of={faults("parts", true)} />
      <button
        type="button"
        disabled={parts.length >= MOST.parts}
        onClick={() => {
          const taken = parts.map(({ label }) => label);
          edit({ ...draft, parts: [...parts, emptyPart(freeLetter("abcdefghijklmnopqrstuvwxyz", taken))] });
          focus(placeId(`parts.${parts.length}.title`));
        }}
      >
        {say.ADD_PART}
      </button>
    </fieldset>
  );
}

interface PartProps extends Editing, Vocabulary {
  draft: Draft;
  faults: Faults;
  part: DraftPart;
  p: number;
  set(change: Partial<DraftPart>): void;
  remove(): void;
}

function Part(props: PartProps) {
  const { draft, faults, part, p, set, remove, focus } = props;
  const at = `parts.${p}`;
  const { tests } = part;
  const both = draft.samples.some(({ given }) => given === "both");
  const setTest = (t: number, change: Partial<DraftTest>) =>
    set({ tests: tests.map((one, index) => (index === t ? { ...one, ...change } : one)) });
  return (
    <fieldset class="part-entry" aria-label={say.part(part.label)}>
      <div class="row">
        <Field
          name={say.PART}
          place={`${at}.label`}
          size={2}
          value={part.label}
          fault={faults(`${at}.label`)}
          onType={(label) => set({ label: label.trim() })}
        />
        <Field
          name={say.CALLED}
          says={say.partCalled(part.label)}
          place={`${at}.title`}
          size={22}
          value={part.title}
          hint={say.part(part.label)}
          fault={faults(`${at}.title`)}
          onType={(title) => set({ title })}
        />
        {both && (
          <Choice
            name={say.TAKEN_AS}
            says={say.partTakes(part.label)}
            place={`${at}.from`}
            value={part.from}
            of={TAKEN}
            onChoose={(from) => set({ from: from as DraftPart["from"] })}
          />
        )}
        <button type="button" onClick={remove}>
          {say.removePart(part.label)}
        </button>
      </div>
      {draft.samples.length > 1 && (
        <Letters
          name={say.DONE_ON}
          place={`${at}.samples`}
          letters={draft.samples.map(({ label }) => label)}
          chosen={part.samples}
          fault={faults(`${at}.samples`)}
          onChoose={(samples) => set({ samples })}
        />
      )}
      {tests.map((one, t) => (
        <Test
          key={t}
          {...props}
          test={one}
          t={t}
          setTest={(change) => setTest(t, change)}
          split={(s) => {
            const [before, after] = [one.steps.slice(0, s), one.steps.slice(s)];
            set({ tests: [...tests.slice(0, t), { ...one, steps: before }, emptyTest(after), ...tests.slice(t + 1)] });
            focus(placeId(`${at}.tests.${t + 1}.steps.0.verb`));
          }}
        />
      ))}
      <Fault id={`${placeId(at)}-fault`} of={faults(`${at}.tests`, true)} />
      <button
        type="button"
        disabled={tests.length >= MOST.tests}
        onClick={() => {
          set({ tests: [...tests, emptyTest([{ add: "", volume: "1 cm3" }])] });
          focus(placeId(`${at}.tests.${tests.length}.steps.0.verb`));
        }}
      >
        {say.ADD_TEST}
        <span class="vh">{say.ofPart(part.label)}</span>
      </button>
    </fieldset>
  );
}

interface TestProps extends PartProps {
  test: DraftTest;
  t: number;
  setTest(change: Partial<DraftTest>): void;
  /** Begins a test of its own at a step. */
  split(step: number): void;
}

function Test({ draft, faults, part, p, test, t, set, setTest, split, focus, ...vocabulary }: TestProps) {
  const at = `parts.${p}.tests.${t}`;
  const id = linesOf(draft.parts).find((line) => line.part === p && line.test === t)?.id ?? "";
  const setSteps = (steps: WrittenStep[]) => setTest({ steps });
  return (
    <fieldset class="test-entry" aria-label={say.test(id)}>
      <p class="test-head">
        <b>{id}</b> {test.says && <q>{test.says}</q>}
      </p>
      <ol>
        {test.steps.map((step, s) => (
          <StepForm
            key={s}
            {...vocabulary}
            step={step}
            place={`${at}.steps.${s}`}
            called={say.stepOf(s + 1, id)}
            faults={faults}
            onChange={(next) => setSteps(test.steps.map((one, index) => (index === s ? next : one)))}
            onRemove={() => {
              setSteps(test.steps.filter((_, index) => index !== s));
              focus(`${placeId(at)}-add`);
            }}
            onBreak={s > 0 && part.tests.length < MOST.tests ? () => split(s) : undefined}
          />
        ))}
      </ol>
      <Fault id={`${placeId(at)}-fault`} of={faults(`${at}.steps`, true)} />
      <p class="tools">
        <button
          type="button"
          id={`${placeId(at)}-add`}
          onClick={() => {
            setSteps([...test.steps, { add: "", volume: "1 cm3" }]);
            focus(placeId(`${at}.steps.${test.steps.length}.verb`));
          }}
        >
          {say.ADD_STEP}
          <span class="vh"> {say.toTest(id)}</span>
        </button>
        {t > 0 && (
          <button
            type="button"
            onClick={() => {
              const before = part.tests[t - 1];
              const joined = {
                ...before,
                says: fitting(`${before.says} ${test.says}`.trim()),
                steps: [...before.steps, ...test.steps],
              };
              set({ tests: [...part.tests.slice(0, t - 1), joined, ...part.tests.slice(t + 1)] });
              focus(`${placeId(`parts.${p}.tests.${t - 1}`)}-add`);
            }}
          >
            {say.JOIN}
            <span class="vh">, {id}</span>
          </button>
        )}
        <button
          type="button"
          onClick={() => {
            set({ tests: part.tests.filter((_, index) => index !== t) });
            focus("tests");
          }}
        >
          {say.removeTest(id)}
        </button>
      </p>
    </fieldset>
  );
}
