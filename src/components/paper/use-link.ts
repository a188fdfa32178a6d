/** The link a page was reached by, with a whole paper in it. */
import { useEffect, useState } from "preact/hooks";
import type { Draft } from "./draft.ts";
import { draftOf, holdsNoPaper } from "./draft-of.ts";
import { MARK } from "./paper-mark.ts";

/** Opens the paper of a link the page was reached by, as a new one of the list. @returns whether one is being opened */
export function useLink(open: (draft: Draft) => void, tell: (news: string) => void): boolean {
  const [opening, set] = useState(() => location.hash.startsWith(MARK));
  useEffect(() => {
    const read = async () => {
      const { hash } = location;
      if (!hash.startsWith(MARK)) {
        if (/^#\w+=/.test(hash))
          tell("The link has something behind # that is no paper; a paper is behind #paper=. Ask for the link again.");
        return;
      }
      set(true);
      await readPaper(hash);
      set(false);
    };
    const readPaper = async (hash: string) => {
      const found = await import("./paper-link.ts")
        .then(({ fromFragment }) => fromFragment(hash))
        .catch(() => ({ refused: "This browser cannot unpack such a link." }));
      // The paper is in the list now; the address is for the parts of the page again.
      history.replaceState(history.state, "", location.pathname + location.search);
      if ("refused" in found)
        return tell(`The link could not be opened. ${found.refused} Your own papers are as they were.`);
      if (holdsNoPaper(found.written))
        return tell("The link holds no paper. Ask for the link again. Your own papers are as they were.");
      const { draft, leftOut } = draftOf(found.written);
      open(draft);
      tell(`The paper of the link is open.${leftOut.length > 0 ? ` ${leftOut.join(" ")}` : ""}`);
    };
    read();
    addEventListener("hashchange", read);
    return () => removeEventListener("hashchange", read);
  }, []);
  return opening;
}
