/** How each pasted sentence was understood, fetched with the first that is read. */
import * as say from "#words/paper-parts.ts";
import type { ReadInstruction } from "../../engine/wording/read-instruction.ts";
import { Words } from "../Words.tsx";
import { inFewWords } from "./in-few-words.ts";
import type { Bottles } from "./step-kinds.ts";

export { partsFrom, samplesFrom } from "./parts-from.ts";

interface Props {
  read: ReadInstruction;
  bottles: Bottles;
  /** Letters of samples that are added with the tests. */
  added: readonly string[];
  onTake(): void;
  onLeave(): void;
}

export function Understood({ read, bottles, added, onTake, onLeave }: Props) {
  if (read.parts.length === 0) return null;
  return (
    <div class="understood">
      {read.faults.map((fault) => (
        <p class="fault" key={fault}>
          {fault}
        </p>
      ))}
      {read.parts.map((part, p) => (
        <div key={p}>
          <p>
            <b>{say.FRESH_TUBE}</b> {say.tubeFor(part.samples)}
          </p>
          <ol>
            {part.tests.map((test, t) => (
              <li key={t}>
                <ul>
                  {test.stretches.map((stretch, s) => (
                    <li key={s}>
                      <q>{stretch.words}</q>{" "}
                      <span class="means">
                        {stretch.steps.length > 0 ? (
                          <Words of={`${stretch.steps.map((step) => inFewWords(step, bottles)).join("; ")}.`} />
                        ) : (
                          say.NOTHING_IS_DONE
                        )}
                      </span>
                      {stretch.assumed.map((one) => (
                        <span class="soft" key={one}>
                          {" "}
                          {say.TAKEN_FOR_GRANTED} <Words of={`${one}.`} />
                        </span>
                      ))}
                      {stretch.questions.map((one) => (
                        <span class="asks" key={one}>
                          {" "}
                          <b>{say.QUESTION}</b> {one}
                        </span>
                      ))}
                    </li>
                  ))}
                </ul>
              </li>
            ))}
          </ol>
        </div>
      ))}
      {added.length > 0 && (
        <p>
          <b>{say.notInPaper(added)}</b>
        </p>
      )}
      <p class="tools">
        <button type="button" onClick={onTake}>
          {say.TAKE_TESTS}
        </button>
        <button type="button" onClick={onLeave}>
          {say.LEAVE_THEM}
        </button>
      </p>
    </div>
  );
}
