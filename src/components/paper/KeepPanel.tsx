/** The paper as a link and as a file. Both are made in this browser; nothing is sent. */
import { useState } from "preact/hooks";
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import type { Draft } from "./draft.ts";
import type { Kept } from "./keep-paper.ts";
import type { PaperWork } from "./paper-work.types.ts";

interface Props {
  draft: Draft;
  work: PaperWork | undefined;
  record: TableRecord;
}

export function KeepPanel({ draft, work, record }: Props) {
  const [link, setLink] = useState<{ of: Draft; address: string }>();
  const [file, setFile] = useState<{ of: Draft; text: string }>();
  const [news, tell] = useState("");
  const address = link?.of === draft ? link.address : undefined;
  const text = file?.of === draft ? file.text : undefined;

  const make = async (of: (keeping: typeof import("./keep-paper.ts")) => Promise<Kept>) => {
    const made = await import("./keep-paper.ts")
      .then(of)
      .catch((): Kept => ({ news: "This part could not be fetched. Check the connection and load the page again." }));
    if (made.address) setLink({ of: draft, address: made.address });
    if (made.text) setFile({ of: draft, text: made.text });
    tell(made.news);
  };

  return (
    <>
      <p class="tools screen">
        <button type="button" onClick={() => make(({ makeLink }) => makeLink(draft))}>
          Make a link to this paper
        </button>
        <button type="button" onClick={() => make(({ makeFile }) => makeFile(draft, work, record))}>
          Save it as the file of a practical
        </button>
        <button type="button" onClick={() => print()}>
          Print
        </button>
      </p>
      <p role="status">{news}</p>
      {address && (
        <p class="screen">
          <label for="link">The link holds the whole paper and its record</label>
          <input
            id="link"
            class="whole"
            type="text"
            readOnly
            value={address}
            onFocus={({ currentTarget }) => currentTarget.select()}
          />
        </p>
      )}
      {text && (
        <div class="screen">
          <label for="made-file">The file</label>
          <textarea id="made-file" rows={12} readOnly spellcheck={false} value={text} />
          <p class="small">
            Put it into <code>src/content/practicals/</code> of a site. Where a salt is not certain from your record it
            says <code>salt: "?"</code>: write the answer there, and a summary of your own at the top; until then the
            build names these places.
          </p>
        </div>
      )}
    </>
  );
}
