/** The tubes of limewater that stand ready for a gas: one for each sample of each step that tests a gas in it or leads one through. */
import { LIMEWATER } from "#words/bench.ts";
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import { cellsOf } from "../practical/cells.ts";
import type { GivenSample, Part, Step } from "../practical.ts";
import type { PlannedTube, TubeSize } from "./bench-plan.ts";
import { depthOfVolume } from "./geometry.ts";

/** Limewater a step asks for, cm3. */
function cm3For(step: Step): number | undefined {
  if (step.do === "lead through") return BENCH_PRACTICE.limewaterLed.value;
  return step.do === "test gas" && step.with === "limewater" ? BENCH_PRACTICE.limewater.value : undefined;
}

/** In the order of the paper. Labels name the line of the record: "P b(i) limewater". */
export function limewaterTubes(
  parts: Part[],
  samples: readonly Pick<GivenSample, "label">[],
  size: TubeSize,
): PlannedTube[] {
  return cellsOf(parts).flatMap(({ id, part, test }) => {
    const fillings = test.steps.flatMap((step) => cm3For(step) ?? []);
    return samples
      .filter(({ label }) => part.samples?.includes(label) ?? true)
      .flatMap(({ label }) =>
        fillings.map((cm3, index) => ({
          label: `${label} ${id} ${LIMEWATER}${index > 0 ? ` ${index + 1}` : ""}`,
          sample: label,
          part: part.label,
          size,
          marks: [{ cm3, depthMm: depthOfVolume(cm3, size), what: LIMEWATER }],
          holds: "limewater" as const,
        })),
      );
  });
}
