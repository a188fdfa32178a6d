/** The link a page was reached by, with a whole paper in it. */

import { useEffect, useState } from "preact/hooks";
import * as say from "#words/paper.ts";
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
        if (/^#\w+=/.test(hash)) tell(say.NO_PAPER_BEHIND);
        return;
      }
      set(true);
      await readPaper(hash);
      set(false);
    };
    const readPaper = async (hash: string) => {
      const found = await import("./paper-link.ts")
        .then(({ fromFragment }) => fromFragment(hash))
        .catch(() => ({ refused: say.CANNOT_UNPACK }));
      // The paper is in the list now; the address is for the parts of the page again.
      history.replaceState(history.state, "", location.pathname + location.search);
      if ("refused" in found) return tell(say.linkNotOpened(found.refused));
      if (holdsNoPaper(found.written)) return tell(say.LINK_HOLDS_NO_PAPER);
      const { draft, leftOut } = draftOf(found.written);
      open(draft);
      tell([say.LINK_IS_OPEN, ...leftOut].join(" "));
    };
    read();
    addEventListener("hashchange", read);
    return () => removeEventListener("hashchange", read);
  }, []);
  return opening;
}
