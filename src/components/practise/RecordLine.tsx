/** Where one observation is written, in the writer's own words; below it how it is read, and what is asked. */
import { useMemo } from "preact/hooks";
import * as say from "#words/practise.ts";
import { phrase } from "../../engine/wording/phrase.ts";
import { type AskedOf, readWords } from "../../engine/wording/read-words.ts";
import { plain } from "../sentence.ts";

interface Props {
  sample: string;
  text: string;
  asked: AskedOf;
  /** Wordings to choose from instead of writing. */
  choices: string[];
  onWrite(text: string): void;
  tell(words: string): void;
}

export function RecordLine({ sample, text, asked, choices, onWrite, tell }: Props) {
  const read = useMemo(() => (text.trim() ? readWords(text, asked) : undefined), [text, asked.solid]);
  const understood = read?.seen ? say.readAs(phrase(read.seen, asked.solid ? "solid" : "precipitate")) : undefined;
  const hint = `hint-${sample}`;
  return (
    <div class="own">
      <label>
        {say.recordFor(sample)}
        <input
          type="text"
          class="wide"
          name={sample}
          maxLength={300}
          autocomplete="off"
          value={text}
          aria-describedby={hint}
          onInput={({ currentTarget }) => onWrite(currentTarget.value)}
          onChange={() => read && tell([understood, ...read.questions].filter(Boolean).join(" "))}
        />
      </label>
      <label class="small choose-words">
        {say.OR_CHOOSE}{" "}
        <select value="" onChange={({ currentTarget }) => onWrite(currentTarget.value)}>
          <option value="">…</option>
          {choices.map((words) => (
            <option key={words} value={words}>
              {plain(words)}
            </option>
          ))}
        </select>
      </label>
      <div class="small" id={hint}>
        {understood && <p class="fit">{understood}</p>}
        {read?.questions.map((question) => (
          <p key={question} class="clash">
            {question}
          </p>
        ))}
      </div>
    </div>
  );
}
