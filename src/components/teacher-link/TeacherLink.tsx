/** A link for a class: what it shows is chosen here, and the link stands below, in words and as a code for a camera. */
import { useEffect, useState } from "preact/hooks";
import * as say from "#words/teacher-link.ts";
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
      () => tell(say.COPIED),
      () => tell(say.NOT_COPIED),
    ) ?? tell(say.NOT_COPIED);

  return (
    <>
      <div class="tools choices">
        <label>
          {say.OPENS}{" "}
          <select
            disabled={!awake}
            value={choice.opens}
            onChange={({ currentTarget }) => change({ opens: currentTarget.value as LinkChoice["opens"] })}
          >
            <option value="walkthrough">{say.WALKTHROUGH}</option>
            <option value="practice">{say.PRACTICE}</option>
          </select>
        </label>
        {choice.opens === "walkthrough" && (
          <>
            <label>
              {say.BEGINS}{" "}
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
              {say.EMPTY}
            </label>
            <label>
              <input
                type="checkbox"
                disabled={!awake}
                checked={choice.conclusion === "asked"}
                onChange={({ currentTarget }) => change({ conclusion: currentTarget.checked ? "asked" : "shown" })}
              />{" "}
              {say.HIDDEN}
            </label>
          </>
        )}
        {choice.opens === "practice" && (
          <>
            <label>
              {say.NUMBER}{" "}
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
              {say.ANOTHER}
            </button>
          </>
        )}
      </div>
      <div aria-live="polite">
        {fault ? <p class="caution">{say.stillSet(fault, choice.seed)}</p> : <p>{linkWords(choice, starts)}</p>}
      </div>
      <p class="tools">
        <label class="link">
          {say.LINK} <input type="text" readOnly value={link} onFocus={({ currentTarget }) => currentTarget.select()} />
        </label>
        <button type="button" disabled={!awake} onClick={copy}>
          {say.COPY}
        </button>
        <span role="status">{copied}</span>
      </p>
      {awake && module && (
        <figure class="code">
          <module.QrCode of={link} />
          <figcaption>{link}</figcaption>
        </figure>
      )}
      {failed && <p class="caution">{say.NO_QR_CODE}</p>}
    </>
  );
}
