/** A colour that the liquid is said not to have: "no blue-black colour with starch". Alone it is a negative result. */
import type { Reading } from "./reading.ts";

const BRINGS = "(?:starch(?: solution)?|thiocyanate)";
const NOT =
  "(?:no|not|without|(?:does not|doesn't|did not|didn't|will not|won't) (?:turn|go|become|give|change to))(?: (?:a|any))?";
const DENIED = [
  `${NOT} (?:C(?: colour)?|colour)(?: (?:is|was|seen|appears|appeared|,))* (?:with|in|by|on adding|when) (?:the )?(?:potassium )?${BRINGS}`,
  `(?:with )?${BRINGS}(?: (?:is|was|stays|,))* ${NOT} C(?: colour)?`,
  // Not of a gas, a flame or a solid, and not what nothing but a flame or an indicator could have.
  "no C colour(?! (?:(?:in|of|on|to) (?:the )?)?(?:gas|fumes?|vapours?|flame|paper|litmus|precipitate|solid|residue))",
] as const;

/** Before what is said of colours that are there. */
export function readDenied(reading: Reading): void {
  const { words, asked } = reading;
  if (asked.flame || asked.indicator || asked.heated) return;
  for (const pattern of DENIED) if (words.take(pattern)) reading.denied = true;
}
