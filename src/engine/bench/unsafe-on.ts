/** Which salts a test is unsafe on, whatever it would show. */
import { NOT_GIVEN_OUT, type NotGivenOut } from "../constants/not-given-out.ts";
import type { Step } from "../practical.ts";
import type { SaltEntry } from "./prediction-table.ts";

type Ions = Pick<SaltEntry, "cations" | "anions">;

/** Why no class should carry out these steps on such a sample: every row that speaks against it. */
export const unsafeOn = (steps: readonly Step[], { cations, anions }: Ions): NotGivenOut[] =>
  NOT_GIVEN_OUT.filter(
    ({ step, ions }) =>
      steps.some((one) => one.do === step) && ions.every((ion) => cations.includes(ion) || anions.includes(ion)),
  );

/** True where no class should carry out these steps on such a sample: lead in a flame, ammonium nitrate heated dry. */
export const isUnsafeOn = (steps: readonly Step[], salt: Ions): boolean => unsafeOn(steps, salt).length > 0;
