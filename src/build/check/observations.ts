import type { ContentFault } from "../../authoring/faults.ts";
import { isTrueOf } from "../../engine/bench/agreement.ts";
import type { Practical } from "../../engine/practical.ts";
import { phrase } from "../../engine/wording/phrase.ts";
import type { Walkthrough } from "../walkthrough.ts";
import type { MakeFault } from "./make-fault.ts";

/** Observations the author's own salts would not show. */
export function wrongObservations(
  practical: Practical,
  { predicted, table }: Walkthrough,
  fault: MakeFault,
): ContentFault[] {
  return Object.entries(practical.record).flatMap(([sample, row]) =>
    Object.entries(row).flatMap(([id, seen]) => {
      const path = ["record", sample, id];
      const solid = table.cells.find((each) => each.id === id)?.dry ? "solid" : "precipitate";
      const shown = predicted[sample]?.[id];
      const readings = shown?.readings ?? [];
      const stated = phrase(seen, solid);
      if (readings.length === 0) {
        return fault(path, {
          what: `record ${sample} ${id}`,
          stated,
          found: "the engine does not predict this test or one before it in this tube, so nobody could check it",
          advice: "leave this observation out",
        });
      }
      if (shown && isTrueOf(seen, shown)) return [];
      return fault(path, {
        what: `record ${sample} ${id}`,
        stated,
        found: `the engine finds ${readings.map((reading) => phrase(reading, solid)).join(", or ")} for ${practical.samples.find(({ label }) => label === sample)?.salt}`,
        advice: "correct the observation, the steps or the salt",
      });
    }),
  );
}
