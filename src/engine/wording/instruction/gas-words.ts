/** The ways of testing a gas and of trying a liquid, as papers word them. */
import type { GasTest } from "../../practical/step.ts";

/** In the order they are looked for. Common practice, no source. */
const GAS_TESTS: readonly (readonly [find: RegExp, test: GasTest])[] = [
  [/\bred litmus/, "damp red litmus"],
  [/\bblue litmus/, "damp blue litmus"],
  [/\b(?:glowing|smouldering) (?:wooden )?splint/, "glowing splint"],
  [/\b(?:lighted|lit|burning|lighting) (?:wooden )?splint/, "lighted splint"],
  [/\b(?:manganate|permanganate|kmno4)/, "acidified manganate(VII) paper"],
  [/\b(?:dichromate|k2cr2o7)/, "acidified dichromate(VI) paper"],
  [/\bhydrochloric acid|\bhcl\b/, "rod with hydrochloric acid"],
  [/\bammonia\b|\bnh3\b/, "rod with ammonia"],
  [/\banhydrous copper|\bcopper\(ii\) sulfate/, "anhydrous copper(II) sulfate"],
  [/\bcobalt/, "cobalt(II) chloride paper"],
  [/\blime ?water|\bcalcium hydroxide|\bca\(oh\)2/, "limewater"],
];

/** The way of testing a gas that a clause names. */
export const gasTestIn = (text: string): GasTest | undefined => GAS_TESTS.find(([find]) => find.test(text))?.[1];

/** It is a gas that is tested, not a liquid. */
export const isGasTest = (text: string): boolean =>
  /\bgas(?:es)?\b|\bvapours?\b|\bfumes\b|\bmouth of\b|\bsplint\b|\blitmus paper\b.*\b(?:mouth|above)\b/.test(text);

/** A gas is led through a liquid by a tube. */
export const isLedThrough = (text: string): boolean =>
  /\b(?:pass|bubble|lead)(?:ing)?\b/.test(text) &&
  /\b(?:through|into)\b/.test(text) &&
  /\blime ?water|calcium hydroxide/.test(text);

/** An indicator touched with the liquid. */
export function indicatorIn(text: string): "litmus" | "universal indicator" | undefined {
  if (/\buniversal indicator|\bph paper|\bindicator paper|\bph (?:of|value)/.test(text)) return "universal indicator";
  return /\blitmus/.test(text) ? "litmus" : undefined;
}
