/** What follows from a record: worked out at build for the walkthrough's own, and again in the browser for a reader's. */
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { type Concluded, ConclusionPanel } from "./ConclusionPanel.tsx";
import { findingOf } from "./finding.ts";
import { TooMuch } from "./TooMuch.tsx";
import { WhatChanged } from "./WhatChanged.tsx";

export { changeInWords } from "./change-in-words.ts";
export { answerMarks } from "./marks.ts";

/** @param given the walkthrough's record, where a reader has changed it and not begun one of their own */
export function Conclusion({ given, ...of }: Omit<Concluded, "changed"> & { given?: TableRecord }) {
  const { table, names, record } = of;
  const finding = findingOf(of);
  if (!finding) return <TooMuch />;
  const changed = given && <WhatChanged {...{ table, names, record, given }} />;
  return <ConclusionPanel {...of} {...finding} changed={changed} />;
}
