import { usableReagents } from "../../engine/bench/operations.ts";
import type { Practical } from "../../engine/practical.ts";
import type { ContentFault } from "../faults.ts";
import type { MakeFault } from "./make-fault.ts";

/** Steps the engine cannot carry out on the samples given. */
export function impossibleSteps({ parts, samples }: Practical, fault: MakeFault): ContentFault[] {
  const faults: ContentFault[] = [];
  parts.forEach((part, p) => {
    const done = samples.filter(({ label }) => part.samples?.includes(label) ?? true);
    part.tests.forEach((test, t) => {
      test.steps.forEach((step, s) => {
        const path = ["parts", p, "tests", t, "steps", s];
        if (step.do === "add" && !usableReagents.includes(step.reagent)) {
          faults.push(
            fault([...path, "add"], {
              what: `part ${part.label}: unknown reagent`,
              stated: step.reagent,
              found: "no reagent the engine has constants for",
              advice: `use one of ${usableReagents.join(", ")}, or add its constants with their sources (DEVELOPERS.md)`,
            }),
          );
        }
        if (step.do !== "take") return;
        const wrong = done.filter(({ given }) => given === ("volume" in step ? "solid" : "solution"));
        if (wrong.length === 0) return;
        const letters = wrong.map(({ label }) => label).join(", ");
        const [given, amount] =
          "volume" in step ? ["a solid", "a mass such as 0.2 g"] : ["a solution", "a volume such as 1 cm3"];
        faults.push(
          fault([...path, "take"], {
            what: `part ${part.label}: the sample cannot be taken so`,
            stated: "volume" in step ? `${step.volume.cm3} cm3` : `${step.mass.g} g`,
            found: `${letters} given as ${given}`,
            advice: `take ${amount}, or name the samples of this part`,
          }),
        );
      });
    });
  });
  return faults;
}
