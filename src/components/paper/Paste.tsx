/** The paper's own sentences, read by the grammar: how each was understood, what was taken for granted, what must be asked. */

import { useState } from "preact/hooks";
import { LANGUAGE } from "#words/language.ts";
import * as say from "#words/paper.ts";
import type { ReadInstruction } from "../../engine/wording/read-instruction.ts";
import { useLater } from "../later.ts";
import type { Draft } from "./draft.ts";
import { placeId } from "./fields.tsx";
import type { House } from "./house.ts";
import { LONGEST_PASTED } from "./paper-question.ts";
import type { Bottles } from "./step-kinds.ts";
import type { Editing } from "./use-draft.ts";

const NOT_LOADED = { refused: say.READER_NOT_LOADED };

/** The language the sentences are in, where it is not that of the page. */
const ENGLISH = say.PASTED_IN === LANGUAGE ? undefined : say.PASTED_IN;

const EXAMPLE =
  "(a) To 1 cm3 of solution P add aqueous sodium hydroxide drop by drop, then in excess. Warm gently and test any gas with damp red litmus paper.";

type Props = Editing & { draft: Draft; bottles: Bottles; house: House };

export function Paste({ draft, edit, focus, bottles, house }: Props) {
  const [pasted, paste] = useState("");
  const [read, setRead] = useState<ReadInstruction>();
  const [news, tell] = useState("");
  const [reading, setReading] = useState(false);
  const { module: understood, load } = useLater(() => import("./Understood.tsx"));

  const readIt = async () => {
    setReading(true);
    const found = await Promise.all([import("./paper-desk.ts"), load()])
      .then(([{ desk }, shows]) => (shows ? desk.readSentences(pasted.slice(0, LONGEST_PASTED)) : NOT_LOADED))
      .catch(() => NOT_LOADED);
    setReading(false);
    if ("refused" in found) return tell(found.refused);
    setRead(found);
    const tests = found.parts.flatMap((part) => part.tests);
    const open = tests.flatMap(({ stretches }) => stretches.flatMap(({ questions }) => questions)).length;
    tell(tests.length === 0 ? say.NO_INSTRUCTION : say.linesRead(tests.length, found.parts.length, open));
  };

  const take = () => {
    if (!read || !understood) return;
    const first = draft.parts.length;
    const { samples, added } = understood.samplesFrom(read, draft);
    const parts = understood.partsFrom(read, draft, house);
    edit({ ...draft, samples, parts: [...draft.parts, ...parts] });
    setRead(undefined);
    paste("");
    const more = added.length > 0 ? say.samplesWereAdded(added) : "";
    tell(parts.length > 0 ? say.testsTaken(more) : say.NO_TEST_IN_THESE);
    focus(placeId(`parts.${first}.title`));
  };

  return (
    <fieldset class="entry">
      <legend>{say.PASTE}</legend>
      <label for="pasted">{say.SENTENCES}</label>
      <textarea
        id="pasted"
        rows={5}
        lang={ENGLISH}
        maxLength={LONGEST_PASTED}
        placeholder={EXAMPLE}
        value={pasted}
        onInput={(event) => paste(event.currentTarget.value)}
      />
      <p class="tools">
        <button type="button" disabled={pasted.trim() === "" || reading} onClick={readIt}>
          {reading ? say.READING : say.READ_SENTENCES}
        </button>
        <button type="button" onClick={() => paste(EXAMPLE)} disabled={pasted !== ""}>
          {say.TRY_EXAMPLE}
        </button>
      </p>
      <p role="status">{news}</p>
      {read && understood && (
        <understood.Understood
          read={read}
          bottles={bottles}
          added={understood.samplesFrom(read, draft).added}
          onTake={take}
          onLeave={() => {
            setRead(undefined);
            tell("");
            focus("pasted");
          }}
        />
      )}
    </fieldset>
  );
}
