/** The paper as a link and as a file. Both are made in this browser; nothing is sent. */
import { useState } from "preact/hooks";
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { type Draft, written } from "./draft.ts";
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

  const makeLink = async () => {
    try {
      const { toFragment, LONGEST_CODE } = await import("./paper-link.ts");
      const fragment = await toFragment(written(draft));
      if (fragment.length > LONGEST_CODE) return tell("The paper is too long for a link. Save it as a file.");
      const whole = `${location.origin}${location.pathname}${fragment}`;
      setLink({ of: draft, address: whole });
      tell(await copied(whole));
    } catch {
      tell("This browser cannot make such a link. Save the paper as a file.");
    }
  };

  const makeFile = async () => {
    const { writeFile } = await import("./write-file.ts");
    const made = writeFile(draft, work ? await certainSalts(work, record) : {});
    setFile({ of: draft, text: made });
    save(made, fileName(draft.title));
    tell("The file is saved. Its text stands below as well.");
  };

  return (
    <>
      <p class="tools screen">
        <button type="button" onClick={makeLink}>
          Make a link to this paper
        </button>
        <button type="button" onClick={makeFile}>
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

async function copied(text: string): Promise<string> {
  try {
    await navigator.clipboard.writeText(text);
    return "The link is copied.";
  } catch {
    return "The link stands below: copy it from there.";
  }
}

/** The salt of each sample that the record leaves just one. */
async function certainSalts({ table, names }: PaperWork, record: TableRecord): Promise<Record<string, string>> {
  const { findingOf } = await import("./PaperConclusion.tsx");
  const samples = findingOf({ table, names, record })?.conclusion.samples ?? [];
  return Object.fromEntries(
    samples.flatMap(({ sample, salts }) => (salts.length === 1 ? [[sample, table.salts[salts[0]].formula]] : [])),
  );
}

function save(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "text/markdown" }));
  const anchor = document.createElement("a");
  anchor.href = address;
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** "two-jars.mdx" */
const fileName = (title: string): string => {
  const plain = title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, 60)
    .replace(/^-|-$/g, "");
  return `${plain || "paper"}.mdx`;
};
