/** Salts that no unknown may be where a test would be unsafe on them, besides those not heated dry (`NOT_HEATED`). */
import { NOT_HEATED } from "./heating.ts";

/** Salts that hold all of these ions are not put through this step. Defer to the teacher in charge and the local rules. */
export interface NotGivenOut {
  step: "flame" | "heat solid";
  ions: readonly string[];
  /** Why, in plain sentences. */
  reason: string;
  source: string;
}

/** What is not heated dry for its dust and fume does not go into a flame either. */
const inFlame = (
  [
    ["Co^2+", "cobalt salt"],
    ["Ni^2+", "nickel salt"],
    ["CrO4^2-", "chromate(VI)"],
  ] as const
).map(
  ([ion, what]): NotGivenOut => ({
    step: "flame",
    ions: [ion],
    reason: `The fume and dust of a ${what} in a flame can cause cancer when breathed in. No flame test on it in class.`,
    source: "carcinogenic by inhalation (CLP); no flame test: common practice, from memory",
  }),
);

export const NOT_GIVEN_OUT: readonly NotGivenOut[] = [
  {
    step: "flame",
    ions: ["Pb^2+"],
    reason: "Lead in a flame gives off toxic fume, which harms unborn children. No flame test on it in class.",
    source: "lead fume is toxic and harms unborn children (CLP); common practice, from memory",
  },
  ...inFlame,
  {
    step: "heat solid",
    ions: ["Pb^2+", "NO3-"],
    reason:
      "Heated lead(II) nitrate gives off much nitrogen dioxide, which is very toxic, and crackles and throws out lead dust. Never heat the solid in class.",
    source: "gives much nitrogen dioxide, crackles and throws out lead dust; common practice, from memory",
  },
  ...NOT_HEATED.map(({ ions, reason, source }): NotGivenOut => ({ step: "heat solid", ions, reason, source })),
];
