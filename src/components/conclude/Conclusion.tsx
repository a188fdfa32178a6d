/** What follows from a record: worked out at build for the walkthrough's own, and again in the browser for a reader's. */
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { type Concluded, ConclusionPanel } from "./ConclusionPanel.tsx";
import { type FurtherSource, FurtherTests } from "./FurtherTests.tsx";
import { findingOf } from "./finding.ts";
import { TooMuch } from "./TooMuch.tsx";
import { WhatChanged } from "./WhatChanged.tsx";

export { changeInWords } from "./change-in-words.ts";
export { answerMarks } from "./marks.ts";

type Of = Omit<Concluded, "changed" | "beyond"> & FurtherSource & { given?: TableRecord };

/** @param given the walkthrough's record, where a reader has changed it and not begun one of their own */
export function Conclusion({ given, further, furtherAt, ...of }: Of) {
  const { table, names, record } = of;
  const finding = findingOf(of);
  if (!finding) return <TooMuch />;
  const changed = given && <WhatChanged {...{ table, names, record, given }} />;
  const beyond = (left: number[][]) => <FurtherTests {...{ table, left, further, furtherAt }} />;
  return <ConclusionPanel {...of} {...finding} changed={changed} beyond={beyond} />;
}
