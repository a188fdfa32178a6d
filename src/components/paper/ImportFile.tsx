/** A paper from the file of a practical, chosen or pasted, fetched when a reader opens it. A file with faults opens nothing until the reader says so. */

import { useState } from "preact/hooks";
import * as say from "#words/paper-files.ts";
import { type Draft, written } from "./draft.ts";
import { draftOf } from "./draft-of.ts";

interface Found {
  faults: string[];
  /** What could be read; absent where nothing could. */
  draft?: Draft;
}

const TOLD = 20;

interface Props {
  onOpen(draft: Draft, news: string): void;
  /** A file was not opened: what was said of the one before is past. */
  onFault(): void;
}

export function ImportFile({ onOpen, onFault }: Props) {
  const [text, type] = useState("");
  const [found, tell] = useState<Found>();
  const [reading, work] = useState(false);

  const read = async (name: string, file: string) => {
    work(true);
    const result = await readPaperFile(name, file).catch((): Found => ({ faults: [say.NOT_LOADED] }));
    work(false);
    if (result.draft && result.faults.length === 0) {
      type("");
      tell(undefined);
      onOpen(result.draft, say.IS_OPEN);
    } else {
      onFault();
      tell(result);
    }
  };

  return (
    <>
      <p>
        <label>
          {say.FILE}{" "}
          <input
            type="file"
            accept=".mdx,.md,.txt,text/markdown,text/plain"
            disabled={reading}
            onChange={async ({ currentTarget }) => {
              const file = currentTarget.files?.[0];
              currentTarget.value = "";
              if (!file) return;
              if (file.size > 256_000) {
                onFault();
                return tell({ faults: [say.tooManyBytes(file.size)] });
              }
              const content = await file.text();
              type(content);
              await read(file.name, content);
            }}
          />
        </label>
      </p>
      <label for="file-text">{say.OR_ITS_TEXT}</label>
      <textarea
        id="file-text"
        rows={4}
        spellcheck={false}
        value={text}
        onInput={(event) => type(event.currentTarget.value)}
      />
      <p class="tools">
        <button type="button" disabled={text.trim() === "" || reading} onClick={() => read(say.THIS_TEXT, text)}>
          {reading ? say.READING : say.OPEN_TEXT}
        </button>
      </p>
      <div role="status">
        {found && (
          <div class="caution">
            <p>
              <b>{say.hasFaults(found.faults.length)}</b>
            </p>
            <ul>
              {found.faults.slice(0, TOLD).map((fault) => (
                <li key={fault}>{fault}</li>
              ))}
              {found.faults.length > TOLD && <li>{say.andMore(found.faults.length - TOLD)}</li>}
            </ul>
            {found.draft && (
              <p class="tools">
                <button
                  type="button"
                  onClick={() => {
                    if (found.draft) onOpen(found.draft, say.IS_OPEN_IN_PART);
                    type("");
                    tell(undefined);
                  }}
                >
                  {say.OPEN_WHAT_COULD}
                </button>
              </p>
            )}
          </div>
        )}
      </div>
    </>
  );
}

/** Reads a file with the site's own reader of frontmatter, fetched when it is first used, and checks it in the worker. */
async function readPaperFile(name: string, text: string): Promise<Found> {
  const { readFile } = await import("./paper-file.ts");
  const file = readFile(name, text);
  if ("faults" in file) return { faults: file.faults };
  const { draft, leftOut } = draftOf(file.data);
  const { desk } = await import("./paper-desk.ts");
  const checked = await desk.check(written(draft));
  if ("refused" in checked) return { faults: [checked.refused] };
  const faults = checked.map(({ path, message }) => say.faultAt(file.placeOf(path), path.join(" > "), message));
  return { draft, faults: [...leftOut, ...faults] };
}
