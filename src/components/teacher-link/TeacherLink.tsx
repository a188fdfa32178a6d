/** A link for a class: what it shows is chosen here, and the link stands below, in words and as a code for a camera. */
import { useEffect, useState } from "preact/hooks";
import { useAwake } from "../awake.ts";
import { useLater } from "../later.ts";
import { newSeed, readSeed } from "../practise/seed.ts";
import { type LinkChoice, linkFor, linkWords, type Start } from "./link-choice.ts";

interface Props {
  /** Path of the walkthrough on its host, ending in a slash. */
  walkthrough: string;
  starts: Start[];
}

const USUAL: LinkChoice = { opens: "walkthrough", record: "empty", conclusion: "asked", anchor: "", seed: 1234 };

export default function TeacherLink({ walkthrough, starts }: Props) {
  const awake = useAwake();
  const [choice, choose] = useState(USUAL);
  const [typed, type] = useState(String(USUAL.seed));
  const [copied, tell] = useState("");
  const { module, failed, load } = useLater(() => import("./QrCode.tsx"));
  useEffect(() => {
    load();
  }, []);
  const change = (entry: Partial<LinkChoice>) => {
    choose({ ...choice, ...entry });
    tell("");
  };
  const draw = (text: string) => {
    type(text);
    const seed = readSeed(text);
    if (typeof seed === "number") change({ seed });
  };
  const seed = readSeed(typed);
  const fault = choice.opens === "practice" && typeof seed === "string" ? seed : undefined;
  const link = linkFor(choice, awake ? new URL(walkthrough, location.href).href : walkthrough);
  const copy = () =>
    navigator.clipboard?.writeText(link).then(
      () => tell("Copied."),
      () => tell(NOT_COPIED),
    ) ?? tell(NOT_COPIED);

  return (
    <>
      <div class="tools choices">
        <label>
          Opens{" "}
          <select
            disabled={!awake}
            value={choice.opens}
            onChange={({ currentTarget }) => change({ opens: currentTarget.value as LinkChoice["opens"] })}
          >
            <option value="walkthrough">the walkthrough</option>
            <option value="practice">blind practice, the same unknowns for all</option>
          </select>
        </label>
        {choice.opens === "walkthrough" && (
          <>
            <label>
              Begins{" "}
              <select
                disabled={!awake}
                value={choice.anchor}
                onChange={({ currentTarget }) => change({ anchor: currentTarget.value })}
              >
                {starts.map(({ anchor, name }) => (
                  <option key={anchor} value={anchor}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
            <label>
              <input
                type="checkbox"
                disabled={!awake}
                checked={choice.record === "empty"}
                onChange={({ currentTarget }) => change({ record: currentTarget.checked ? "empty" : "filled" })}
              />{" "}
              The record is empty
            </label>
            <label>
              <input
                type="checkbox"
                disabled={!awake}
                checked={choice.conclusion === "asked"}
                onChange={({ currentTarget }) => change({ conclusion: currentTarget.checked ? "asked" : "shown" })}
              />{" "}
              The conclusion is hidden until asked
            </label>
          </>
        )}
        {choice.opens === "practice" && (
          <>
            <label>
              Number of the set{" "}
              <input
                type="text"
                inputMode="numeric"
                autocomplete="off"
                size={8}
                maxLength={20}
                value={typed}
                aria-invalid={fault ? "true" : undefined}
                onInput={({ currentTarget }) => draw(currentTarget.value)}
              />
            </label>
            <button type="button" onClick={() => draw(String(newSeed(Math.random)))}>
              Another number
            </button>
          </>
        )}
      </div>
      <div aria-live="polite">
        {fault ? (
          <p class="caution">
            {fault} The link below is still that of set {choice.seed}.
          </p>
        ) : (
          <p>{linkWords(choice, starts)}</p>
        )}
      </div>
      <p class="tools">
        <label class="link">
          The link <input type="text" readOnly value={link} onFocus={({ currentTarget }) => currentTarget.select()} />
        </label>
        <button type="button" disabled={!awake} onClick={copy}>
          Copy
        </button>
        <span role="status">{copied}</span>
      </p>
      {awake && module && (
        <figure class="code">
          <module.QrCode of={link} />
          <figcaption>{link}</figcaption>
        </figure>
      )}
      {failed && (
        <p class="caution">
          The QR code could not be drawn: check the connection and load the page again. The link above works without it.
        </p>
      )}
    </>
  );
}

const NOT_COPIED = "The browser did not copy it: choose the link and copy it by hand.";
