import type { ContentFault } from "../../authoring/faults.ts";
import { candidates } from "../../engine/deduction/candidates.ts";
import { undecided } from "../../engine/deduction/deduce.ts";
import type { Practical } from "../../engine/practical.ts";
import { answerOf } from "../answer.ts";
import type { Walkthrough } from "../walkthrough.ts";
import type { MakeFault } from "./make-fault.ts";

/**
 * Samples whose answer the whole record rules out although each observation may be true of it. So it is where an author leaves out what
 * another salt would not show: "turns red" where a precipitate stays as well is another salt's sight, whole.
 */
export function ledAstray(practical: Practical, { table, record }: Walkthrough, fault: MakeFault): ContentFault[] {
  const left = undecided(table, record);
  const astray = practical.samples.flatMap((sample, place) => {
    const answer = answerOf(table, sample)?.formula;
    if (left[sample.label].some((salt) => table.salts[salt].formula === answer)) return [];
    const against = candidates(table, record, place).find(({ salt }) => table.salts[salt].formula === answer)?.clashes;
    return [{ sample, lines: against?.map((cell) => table.cells[cell].id) ?? [] }];
  });
  // Together they fit nothing as soon as one fits nothing by itself: only that one is at fault.
  const own = astray.filter(({ lines }) => lines.length > 0);
  return (own.length > 0 ? own : astray).map(({ sample, lines }) =>
    fault(["record", sample.label, ...lines.slice(0, 1)], {
      what: `record ${sample.label}: it does not lead to the answer`,
      stated: `${sample.salt} is the answer`,
      found:
        lines.length > 0
          ? `what is written at ${lines.join(", ")} is the whole of what another salt shows, and only a part of what this one does`
          : "what the paper says of its samples, with this record, rules it out",
      advice:
        "write down all that the tube shows, a precipitate that is still there too, or correct what the paper says",
    }),
  );
}
