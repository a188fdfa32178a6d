/** How hard a set of unknowns is to tell, by figures that a teacher can check. The limits are our choice, no source. */
import type { Place } from "./conclusion.ts";
import type { NearestOther } from "./nearest-other.ts";

/** From the kindest to the hardest; the tests do not decide a set that is undecided. */
export const STANDINGS = ["easy", "middling", "hard", "undecided"] as const;
export type Standing = (typeof STANDINGS)[number];

export interface Judged {
  standing: Standing;
  nearest: NearestOther;
  /** Samples whose own observations leave more than one salt, so that they need another sample and what the paper says. */
  leaning: number;
  /** Of a decided set: places at which a sight that the salt there shows less often, as at the border, would leave it open. */
  borders: Place[];
}

/**
 * Easy: each sample is decided by its own tests, also with a sight at the border, and no more other answers than there are samples are one
 * misread observation away. Hard: two samples or more need another one, or more than twice as many answers as samples are one misread observation away.
 */
export function standingOf({ nearest, leaning, borders }: Omit<Judged, "standing">, samples: number): Standing {
  if (nearest.observations === 0) return "undecided";
  const oneAway = oneObservationAway(nearest);
  if (leaning > 1 || oneAway > 2 * samples) return "hard";
  return leaning === 0 && borders.length === 0 && oneAway <= samples ? "easy" : "middling";
}

/** Other answers that one misread observation leads to. */
export const oneObservationAway = ({ observations, assignments }: NearestOther): number =>
  observations === 1 ? assignments : 0;
