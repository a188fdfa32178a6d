/** The paper's own sentences, read by the grammar: how each was understood, what was taken for granted, what must be asked. */
import { useState } from "preact/hooks";
import type { ReadInstruction } from "../../engine/wording/read-instruction.ts";
import { list } from "../sentence.ts";
import { Words } from "../Words.tsx";
import type { Draft } from "./draft.ts";
import { placeId } from "./fields.tsx";
import { LONGEST_PASTED } from "./paper-question.ts";
import { partsFrom } from "./parts-from.ts";
import { type Bottles, wordsOf } from "./step-kinds.ts";
import type { Editing } from "./use-draft.ts";

const EXAMPLE =
  "(a) To 1 cm3 of solution P add aqueous sodium hydroxide drop by drop, then in excess. Warm gently and test any gas with damp red litmus paper.";

export function Paste({ draft, edit, focus, bottles }: Editing & { draft: Draft; bottles: Bottles }) {
  const [pasted, paste] = useState("");
  const [read, setRead] = useState<ReadInstruction>();
  const [news, tell] = useState("");
  const [reading, setReading] = useState(false);

  const readIt = async () => {
    setReading(true);
    const found = await import("./paper-desk.ts")
      .then(({ desk }) => desk.readSentences(pasted.slice(0, LONGEST_PASTED)))
      .catch(() => ({ refused: "The reader could not be loaded. Check the connection and load the page again." }));
    setReading(false);
    if ("refused" in found) return tell(found.refused);
    setRead(found);
    const tests = found.parts.flatMap((part) => part.tests);
    const open = tests.flatMap(({ stretches }) => stretches.flatMap(({ questions }) => questions)).length;
    tell(
      tests.length === 0
        ? "No instruction was found in this text."
        : `${count(tests.length, "line")} of the record read in ${count(found.parts.length, "part")}${open > 0 ? `, with ${count(open, "question")}` : ""}.`,
    );
  };

  const take = () => {
    if (!read) return;
    const first = draft.parts.length;
    edit({ ...draft, parts: [...draft.parts, ...partsFrom(read, draft)] });
    setRead(undefined);
    paste("");
    tell("The tests are in the paper below. Fields that are still open are marked there.");
    focus(placeId(`parts.${first}.title`));
  };

  return (
    <fieldset class="entry">
      <legend>Paste the tests</legend>
      <label for="pasted">The sentences of the paper, one or many</label>
      <textarea
        id="pasted"
        rows={5}
        maxLength={LONGEST_PASTED}
        placeholder={EXAMPLE}
        value={pasted}
        onInput={(event) => paste(event.currentTarget.value)}
      />
      <p class="tools">
        <button type="button" disabled={pasted.trim() === "" || reading} onClick={readIt}>
          {reading ? "Reading …" : "Read these sentences"}
        </button>
        <button type="button" onClick={() => paste(EXAMPLE)} disabled={pasted !== ""}>
          Try an example
        </button>
      </p>
      <p role="status">{news}</p>
      {read && read.parts.length > 0 && (
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
          <p class="tools">
            <button type="button" onClick={take}>
              Put these tests into the paper
            </button>
            <button
              type="button"
              onClick={() => {
                setRead(undefined);
                tell("");
                focus("pasted");
              }}
            >
              Leave them
            </button>
          </p>
        </div>
      )}
    </fieldset>
  );
}

const count = (many: number, what: string) => `${many} ${what}${many === 1 ? "" : "s"}`;
