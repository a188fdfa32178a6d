/** An observation typed in the reader's own words, read as a mark scheme reads it, completed or questioned. */

import { useState } from "preact/hooks";
import * as say from "#words/paper-parts.ts";
import type { Observation } from "../../engine/practical.ts";
import { phrase } from "../../engine/wording/phrase.ts";
import { type AskedOf, readWords } from "../../engine/wording/read-words.ts";
import { Words } from "../Words.tsx";
import { Choice } from "./fields.tsx";

/** A place of the record. */
export interface Place {
  sample: string;
  cell: string;
  done: boolean;
  asked: AskedOf;
}

interface Props {
  places: readonly Place[];
  onWrite(place: Place, seen: Observation): void;
}

const key = ({ sample, cell }: Place) => say.place(cell, sample);

export function InWords({ places, onWrite }: Props) {
  const [at, choose] = useState("");
  const [text, type] = useState("");
  const [news, tell] = useState("");
  const place = places.find((one) => key(one) === at) ?? places.find(({ done }) => !done) ?? places[0];
  if (!place) return null;
  const read = text.trim() === "" ? undefined : readWords(text, place.asked);
  const words = read?.seen && phrase(read.seen, place.asked.solid ? "precipitate" : undefined);
  const write = () => {
    if (!read?.seen) return;
    onWrite(place, read.seen);
    tell(say.wroteDown(key(place), words ?? ""));
    type("");
    choose("");
  };
  return (
    <form
      class="in-words"
      onSubmit={(event) => {
        event.preventDefault();
        write();
      }}
    >
      <div class="row">
        <Choice
          name={say.TEST_AND_SAMPLE}
          place="words.place"
          value={key(place)}
          of={places.map((one) => [key(one), `${key(one)}${one.done ? ` ${say.WRITTEN}` : ""}`] as const)}
          onChoose={choose}
        />
        <span class="field wide-field">
          <label for="in-words">{say.YOU_SAW}</label>
          <input
            id="in-words"
            type="text"
            size={40}
            maxLength={300}
            autocomplete="off"
            value={text}
            placeholder={say.SUCH_AS}
            aria-describedby="in-words-read"
            onInput={(event) => type(event.currentTarget.value)}
          />
        </span>
        <button type="submit" disabled={!read?.seen}>
          {say.WRITE_DOWN}
        </button>
      </div>
      <div id="in-words-read">
        {words && (
          <p>
            {say.READ_AS}{" "}
            <b>
              <Words of={words} />
            </b>
            .
          </p>
        )}
        {read?.questions.map((question) => (
          <p class="asks" key={question}>
            <b>{say.QUESTION}</b> {question}
          </p>
        ))}
      </div>
      <p class="vh" role="status">
        {news}
      </p>
    </form>
  );
}
