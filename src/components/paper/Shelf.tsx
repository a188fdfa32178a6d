/** The papers kept in this browser: which is open, a new one, an example, one from a file; and the open one deleted, after a question. */
import { useState } from "preact/hooks";
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
      tell("The example is open: its paper without its answer. Change what you like.");
    } catch {
      tell("The example could not be fetched. Check the connection.");
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
            Papers kept here:{" "}
            <select
              autocomplete="off"
              value={kept.open}
              onChange={(event) => {
                paper.choose(event.currentTarget.value);
                tell(`Open now: ${nameOf(kept.papers[event.currentTarget.value])}.`);
              }}
            >
              {kept.open === "" && <option value="">a new paper</option>}
              {ids.map((id) => (
                <option key={id} value={id}>
                  {id === kept.open ? name : nameOf(kept.papers[id])}
                </option>
              ))}
            </select>
          </label>
        )}
        <button type="button" onClick={() => start(emptyDraft(), "An empty paper is open.")}>
          New paper
        </button>
        <label>
          <span class="vh">Start from an example</span>
          <select
            autocomplete="off"
            value=""
            onChange={(event) => {
              const slug = event.currentTarget.value;
              event.currentTarget.value = "";
              if (slug) example(slug);
            }}
          >
            <option value="">Start from an example …</option>
            {examples.map(({ slug, title }) => (
              <option key={slug} value={slug}>
                {title}
              </option>
            ))}
          </select>
        </label>
        <button type="button" disabled={!paper.canUndo} onClick={paper.undo}>
          Undo
        </button>
        {kept.open !== "" && (
          <button type="button" aria-expanded={asking} onClick={() => ask(!asking)}>
            Delete this paper …
          </button>
        )}
      </div>
      {asking && kept.open !== "" && (
        <div class="caution">
          <p>
            <b>Delete "{name}" from this browser?</b> It cannot be brought back.
          </p>
          <p class="tools">
            <button
              type="button"
              onClick={() => {
                ask(false);
                paper.remove(kept.open);
                tell(`"${name}" is deleted.`);
                paper.focus("f-title");
              }}
            >
              Delete it
            </button>
            <button type="button" onClick={() => ask(false)}>
              Keep it
            </button>
          </p>
        </div>
      )}
      <details onToggle={load}>
        <summary>Open the file of a practical</summary>
        {failed && <p class="caution">This part could not be fetched. Check the connection and load the page again.</p>}
        {file && <file.ImportFile onOpen={start} onFault={() => tell("")} />}
      </details>
      {paper.refused && <p class="caution">{paper.refused}</p>}
    </div>
  );
}
