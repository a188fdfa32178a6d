/** Steps of a practical that cannot or must not be carried out, as faults at their place in its file. */
import type { ContentFault } from "../../authoring/faults.ts";
import { impossibleSteps } from "../../engine/bench/impossible-steps.ts";
import type { Practical } from "../../engine/practical.ts";
import type { MakeFault } from "./make-fault.ts";

export const wrongSteps = (practical: Practical, fault: MakeFault): ContentFault[] =>
  impossibleSteps(practical).map(({ path, ...rest }) => fault(path, rest));
