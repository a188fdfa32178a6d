/** Readings of a line that name a colour of the liquid, held against what each salt has in its tube there. */
import type { Observation } from "../practical.ts";
import { namesOther, sameSight } from "./agreement.ts";
import type { Prediction } from "./prediction.ts";

/** Whether a reading names a colour of the liquid that the other leaves out. "Colourless" is the colour of most that leave it out. */
const namesMore = ({ solution }: Observation, other: Observation): boolean =>
  solution !== undefined && solution !== "colourless" && other.solution === undefined;

/** Whether who picked the one reading of a line may have had the other before them: a colour that is picked must be there. */
export const mayHaveSeen = (picked: Observation, other: Observation): boolean =>
  picked === other || (sameSight(picked, other) && !namesMore(picked, other));

/**
 * The readings of a line, as a bit mask, that a salt shows too, though none of its own names a colour of the liquid: theirs is one that
 * stayed as it was, or that of a solid the liquid stands over.
 * @param own mask of the salt's readings
 */
export function colouredAlike(readings: readonly Observation[], own: number, prediction: Prediction): number {
  let mask = 0;
  readings.forEach((reading, r) => {
    const alike = readings.some(
      (one, n) =>
        (own & (1 << n)) !== 0 &&
        namesMore(reading, one) &&
        sameSight(reading, one) &&
        !namesOther(reading, prediction),
    );
    if (alike) mask |= 1 << r;
  });
  return mask;
}
