/** Faults that come from the department's own choices: a reagent the school does not keep, a strength at which a practical no longer follows. */

import type { ContentFault } from "../../authoring/faults.ts";
import { TEST_REAGENTS } from "../../engine/constants/gas-safety.ts";
import type { Practical, Step } from "../../engine/practical.ts";
import { faultsIn, type MakeFault } from "../check/make-fault.ts";
import { checkPractical } from "../check-practical.ts";
import type { PracticalFile } from "../practical-files.ts";
import { department } from "./department.ts";

/** All faults of a practical as this department would publish it. */
export function houseFaults(file: PracticalFile): ContentFault[] {
  const missing = notKept(file.practical, faultsIn(file.source));
  const faults = checkPractical(file);
  if (file.atHouse.length === 0 || faults.length === 0) return [...missing, ...faults];
  // What is wrong at the usual strengths too is the author's; the rest comes from the school's bottles.
  const usual = checkPractical({ ...file, practical: file.asWritten }).map(same);
  const strengths = file.atHouse.join(", ");
  return [
    ...missing,
    ...faults.map((fault) =>
      usual.includes(same(fault))
        ? fault
        : {
            ...fault,
            found: `${fault.found}, with the school's ${strengths}`,
            advice: `change a strength in department.yaml, say the usual one with at in the step, or hide this practical`,
          },
    ),
  ];
}

const same = ({ line, column, what, found }: ContentFault): string => JSON.stringify([line, column, what, found]);

/** Bottles and papers a step needs, as ids of reagents. */
function neededFor(step: Step): [key: string, id: string] | undefined {
  if (step.do === "add") return ["add", step.reagent];
  if (step.do === "lead through") return ["leadThrough", TEST_REAGENTS.limewater ?? ""];
  const id = step.do === "test gas" ? TEST_REAGENTS[step.with] : undefined;
  return id === undefined ? undefined : ["testGas", id];
}

function notKept({ parts }: Practical, fault: MakeFault): ContentFault[] {
  const none = department().notKept;
  return parts.flatMap((part, p) =>
    part.tests.flatMap((test, t) =>
      test.steps.flatMap((step, s) => {
        const [key, id] = neededFor(step) ?? [];
        if (key === undefined || id === undefined || !none.includes(id)) return [];
        const what = `part ${part.label}: a reagent the school does not keep`;
        const advice = "hide this practical in department.yaml, or take the reagent out of notKept there";
        return [
          fault(["parts", p, "tests", t, "steps", s, key], { what, stated: id, found: "it is in notKept", advice }),
        ];
      }),
    ),
  );
}
