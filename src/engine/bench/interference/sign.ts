/** What a prediction says of the one thing a line looks for. */
import { type Colour, type Observation, sameColour } from "../../practical.ts";
import type { Prediction } from "../prediction.ts";
import type { Aim } from "./line.ts";

/** No solid; one of this colour that stays; one that goes wholly or in part; ammonia at the mouth of the tube; limewater that clouds. */
type Sign =
  | { solid: Colour | "old" }
  | "clear"
  | "dissolves"
  | "partly dissolves"
  | "ammonia"
  | "no ammonia"
  | "milky"
  | "not milky";

function signOf(aim: Aim, { precipitate, fate, gas }: Observation): Sign {
  if (aim === "nitrate") return gas && gas.formula === "NH3" ? "ammonia" : "no ammonia";
  if (aim === "carbonate") return gas ? "milky" : "not milky";
  if (fate === "dissolves" || fate === "partly dissolves") return fate;
  if (precipitate) return { solid: precipitate.colour };
  return fate === "remains" ? { solid: "old" } : "clear";
}

function same(a: Sign, b: Sign): boolean {
  if (typeof a === "string" || typeof b === "string") return a === b;
  return a.solid === "old" || b.solid === "old" || sameColour(a.solid, b.solid);
}

/**
 * Compares two predictions of a line: "surely" when no sign one of them accepts is accepted by the other, "perhaps" when `seen` accepts a
 * sign that `right` does not, undefined when they say the same or when either has no opinion.
 */
export function differs(aim: Aim, seen: Prediction | undefined, right: Prediction | undefined) {
  if (!seen?.readings.length || !right?.readings.length) return undefined;
  const signs = seen.readings.map((reading) => signOf(aim, reading));
  const wanted = right.readings.map((reading) => signOf(aim, reading));
  const strange = signs.filter((sign) => !wanted.some((other) => same(sign, other)));
  if (strange.length === 0) return undefined;
  return strange.length === signs.length ? "surely" : "perhaps";
}
