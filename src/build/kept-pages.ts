/** What the pages beside a walkthrough show, each worked out once for all runs. Throws what the functions behind them throw. */
import type { Practical } from "../engine/practical.ts";
import { type ClassPage, classPage } from "./class-sheet.ts";
import { keyOf } from "./department/key.ts";
import { type LiveCurve, liveCurves } from "./live-curves.ts";
import { cache, predictor } from "./predictor.ts";
import { type Unknowns, unknownsOf } from "./unknowns.ts";
import { walkthrough } from "./walkthrough.ts";

const kept = <T>(name: string, make: (practical: Practical) => T) => {
  return (practical: Practical): T => cache.recall(name, keyOf(practical), () => make(practical));
};

export const keptCurves: (practical: Practical) => LiveCurve[] = kept("curves", (one) =>
  liveCurves(one, predictor.solve, walkthrough(one).curves),
);
export const keptClassPage: (practical: Practical) => ClassPage = kept("class", (one) =>
  classPage(one, predictor.solve),
);
export const keptUnknowns: (practical: Practical) => Unknowns = kept("unknowns", unknownsOf);

/** Works out everything the pages of a practical will ask for. */
export function workOutPages(practical: Practical): void {
  walkthrough(practical);
  keptCurves(practical);
  keptClassPage(practical);
  keptUnknowns(practical);
}
