/** At the end of a walkthrough the reader marks it as practised; nothing leaves the browser. Part of an island: it asks for no file of its own. */
import { useState } from "preact/hooks";
import { MARK, NOT_MARKED } from "#words/practised.ts";
import { useLater } from "../later.ts";

/** What keeps the marks comes only when it is needed: a walkthrough is read more often than marked. */
const fetchMarking = () => import("./mark-now.ts");

export function MarkPractised({ practical }: { practical: string }) {
  const marking = useLater(fetchMarking);
  const [said, say] = useState("");
  const mark = async () => {
    const ready = await marking.load();
    say(ready ? ready.markedNow(practical) : NOT_MARKED);
  };
  return (
    <p class="meta screen">
      <button type="button" onClick={mark}>
        {MARK}
      </button>{" "}
      <span role="status">{said}</span>
    </p>
  );
}
