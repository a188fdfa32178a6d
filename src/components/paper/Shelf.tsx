/** The papers kept in this browser: which is open, a new one, an example, one from a file; and the open one deleted, after a question. */

import { useState } from "preact/hooks";
import * as say from "#words/paper.ts";
import { useLater } from "../later.ts";
import { type Draft, emptyDraft } from "./draft.ts";
import { draftOf } from "./draft-of.ts";
import { nameOf } from "./kept-papers.ts";
import type { OpenPaper } from "./use-draft.ts";

interface Props {
  paper: OpenPaper;
  examples: readonly { slug: string; title: string }[];
  examplesAt: string;
  /** Told to everybody: seen and heard. */
  tell(news: string): void;
}

export function Shelf({ paper, examples, examplesAt, tell }: Props) {
  const { kept, draft } = paper;
  const [asking, ask] = useState(false);
  const { module: file, failed, load } = useLater(() => import("./ImportFile.tsx"));
  const ids = Object.keys(kept.papers);
  const name = nameOf({ title: draft.title });

  const example = async (slug: string) => {
    try {
      const answer = await fetch(examplesAt);
      if (!answer.ok) throw new Error(String(answer.status));
      const all = (await answer.json()) as Record<string, unknown>;
      paper.open(draftOf(all[slug]).draft);
      tell(say.EXAMPLE_IS_OPEN);
    } catch {
      tell(say.EXAMPLE_NOT_FETCHED);
    }
  };

  const start = (next: Draft, news: string) => {
    paper.open(next);
    tell(news);
    paper.focus("f-title");
  };

  return (
    <div class="shelf screen">
      <div class="tools">
        {ids.length > 0 && (
          <label>
            {say.KEPT_HERE}{" "}
            <select
              autocomplete="off"
              value={kept.open}
              onChange={(event) => {
                paper.choose(event.currentTarget.value);
                tell(say.openNow(nameOf(kept.papers[event.currentTarget.value])));
              }}
            >
              {kept.open === "" && <option value="">{say.A_NEW_PAPER}</option>}
              {ids.map((id) => (
                <option key={id} value={id}>
                  {id === kept.open ? name : nameOf(kept.papers[id])}
                </option>
              ))}
            </select>
          </label>
        )}
        <button type="button" onClick={() => start(emptyDraft(), say.EMPTY_IS_OPEN)}>
          {say.NEW_PAPER}
        </button>
        <label>
          <span class="vh">{say.FROM_EXAMPLE}</span>
          <select
            autocomplete="off"
            value=""
            onChange={(event) => {
              const slug = event.currentTarget.value;
              event.currentTarget.value = "";
              if (slug) example(slug);
            }}
          >
            <option value="">{say.FROM_EXAMPLE} …</option>
            {examples.map(({ slug, title }) => (
              <option key={slug} value={slug}>
                {title}
              </option>
            ))}
          </select>
        </label>
        <button type="button" disabled={!paper.canUndo} onClick={paper.undo}>
          {say.UNDO}
        </button>
        {kept.open !== "" && (
          <button type="button" aria-expanded={asking} onClick={() => ask(!asking)}>
            {say.DELETE}
          </button>
        )}
      </div>
      {asking && kept.open !== "" && (
        <div class="caution">
          <p>
            <b>{say.deleteFrom(name)}</b> {say.NO_WAY_BACK}
          </p>
          <p class="tools">
            <button
              type="button"
              onClick={() => {
                ask(false);
                paper.remove(kept.open);
                tell(say.deleted(name));
                paper.focus("f-title");
              }}
            >
              {say.DELETE_IT}
            </button>
            <button type="button" onClick={() => ask(false)}>
              {say.KEEP_IT}
            </button>
          </p>
        </div>
      )}
      <details onToggle={load}>
        <summary>{say.OPEN_FILE}</summary>
        {failed && <p class="caution">{say.PART_NOT_FETCHED}</p>}
        {file && <file.ImportFile onOpen={start} onFault={() => tell("")} />}
      </details>
      {paper.refused && <p class="caution">{paper.refused}</p>}
    </div>
  );
}
