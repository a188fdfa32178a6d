/** How each pasted sentence was understood, fetched with the first that is read. */
import type { ReadInstruction } from "../../engine/wording/read-instruction.ts";
import { list } from "../sentence.ts";
import { Words } from "../Words.tsx";
import { type Bottles, wordsOf } from "./step-kinds.ts";

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
            <b>A fresh tube</b>
            {part.samples.length > 0 ? ` for ${list(part.samples)}` : " for each sample"}
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
                          <Words of={`${stretch.steps.map((step) => wordsOf(step, bottles)).join("; ")}.`} />
                        ) : (
                          "nothing is done in the tube."
                        )}
                      </span>
                      {stretch.assumed.map((one) => (
                        <span class="soft" key={one}>
                          {" "}
                          Taken for granted: <Words of={`${one}.`} />
                        </span>
                      ))}
                      {stretch.questions.map((one) => (
                        <span class="asks" key={one}>
                          {" "}
                          <b>Question:</b> {one}
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
          <b>
            {added.length === 1
              ? `Sample ${added[0]} is not in the paper yet: it is added with the tests.`
              : `Samples ${list(added)} are not in the paper yet: they are added with the tests.`}
          </b>
        </p>
      )}
      <p class="tools">
        <button type="button" onClick={onTake}>
          Put these tests into the paper
        </button>
        <button type="button" onClick={onLeave}>
          Leave them
        </button>
      </p>
    </div>
  );
}
