/** Salts that no unknown may be where a test would be unsafe on them, besides those not heated dry (`NOT_HEATED`). */
import { NOT_HEATED } from "./heating.ts";

/** Salts that hold all of these ions are not put through this step. Defer to the teacher in charge and the local rules. */
export interface NotGivenOut {
  step: "flame" | "heat solid";
  ions: readonly string[];
  source: string;
}

export const NOT_GIVEN_OUT: readonly NotGivenOut[] = [
  {
    step: "flame",
    ions: ["Pb^2+"],
    source: "lead fume is toxic and harms unborn children (CLP); common practice, from memory",
  },
  {
    step: "heat solid",
    ions: ["Pb^2+", "NO3-"],
    source: "gives much nitrogen dioxide, crackles and throws out lead dust; common practice, from memory",
  },
  ...NOT_HEATED.map(({ ions, source }): NotGivenOut => ({ step: "heat solid", ions, source })),
];
