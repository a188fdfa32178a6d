/** The paper as a link and as a file. Both are made in this browser; nothing is sent. */

import { useState } from "preact/hooks";
import * as say from "#words/paper.ts";
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import type { Draft } from "./draft.ts";
import type { Kept } from "./keep-paper.ts";
import type { PaperWork } from "./paper-work.types.ts";

interface Props {
  draft: Draft;
  work: PaperWork | undefined;
  record: TableRecord;
}

/** Where the file of a practical lies in a site, and what it says of a salt that is not certain. */
const FOLDER = "src/content/practicals/";
const OPEN_SALT = 'salt: "?"';

export function KeepPanel({ draft, work, record }: Props) {
  const [link, setLink] = useState<{ of: Draft; address: string }>();
  const [file, setFile] = useState<{ of: Draft; text: string }>();
  const [news, tell] = useState("");
  const address = link?.of === draft ? link.address : undefined;
  const text = file?.of === draft ? file.text : undefined;

  const make = async (of: (keeping: typeof import("./keep-paper.ts")) => Promise<Kept>) => {
    const made = await import("./keep-paper.ts").then(of).catch((): Kept => ({ news: say.PART_NOT_FETCHED }));
    if (made.address) setLink({ of: draft, address: made.address });
    if (made.text) setFile({ of: draft, text: made.text });
    tell(made.news);
  };

  return (
    <>
      <p class="tools screen">
        <button type="button" onClick={() => make(({ makeLink }) => makeLink(draft))}>
          {say.MAKE_LINK}
        </button>
        <button type="button" onClick={() => make(({ makeFile }) => makeFile(draft, work, record))}>
          {say.SAVE_FILE}
        </button>
        <button type="button" onClick={() => print()}>
          {say.PRINT}
        </button>
      </p>
      <p role="status">{news}</p>
      {address && (
        <p class="screen">
          <label for="link">{say.LINK_HOLDS}</label>
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
          <label for="made-file">{say.FILE}</label>
          <textarea id="made-file" rows={12} readOnly spellcheck={false} value={text} />
          <p class="small">
            {say.PUT_IT.into} <code>{FOLDER}</code> {say.PUT_IT.says} <code>{OPEN_SALT}</code>
            {say.PUT_IT.until}
          </p>
        </div>
      )}
    </>
  );
}
