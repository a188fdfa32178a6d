/** What waits, cools, is filtered or washed. */
import { timeIn } from "./how-much.ts";
import { nothing, only, type Reader } from "./stretch.ts";
import { keptIn } from "./which-sample.ts";

export const readWait: Reader = (text) => {
  if (/^(?:cool|(?:allow|leave|let)\b.*\bcool)\b/.test(text)) return only({ cool: true });
  if (!/^(?:stand|(?:allow|leave|let)\b)/.test(text)) return undefined;
  const time = timeIn(text);
  return time ? only({ stand: time }) : only({ stand: "" }, { questions: ["How long does it stand?"] });
};

/** Asked of a filtration until a later stretch says it. */
export const WHICH_KEPT = "Which is kept: the filtrate or the residue?";

export const readFilter: Reader = (text) => {
  const kept = keptIn(text);
  if (/^(?:wash|rinse)\b/.test(text)) return only({ wash: true }, { keeps: "residue" });
  if (/^(?:collect|keep|use)\b/.test(text) && kept) return { ...nothing(), keeps: kept };
  if (!/^(?:filter|centrifuge|decant)\b/.test(text)) return undefined;
  return kept ? only({ filter: kept }) : only({ filter: "" }, { questions: [WHICH_KEPT] });
};
