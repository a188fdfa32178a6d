/** Which salts a test is unsafe on, whatever it would show. */
import { NOT_GIVEN_OUT } from "../constants/not-given-out.ts";
import type { Step } from "../practical.ts";
import type { SaltEntry } from "./prediction-table.ts";

/** True where no class should carry out these steps on such a sample: lead in a flame, ammonium nitrate heated dry. */
export const isUnsafeOn = (
  steps: readonly Step[],
  { cations, anions }: Pick<SaltEntry, "cations" | "anions">,
): boolean =>
  NOT_GIVEN_OUT.some(
    ({ step, ions }) =>
      steps.some((one) => one.do === step) && ions.every((ion) => cations.includes(ion) || anions.includes(ion)),
  );
