/** Mixtures that the engine has no chemistry for: a test that makes one is left without an opinion. */
import { TEMPERATURE } from "../constants/kinetic-gates.ts";
import { LEAST_PRESENT, NOT_PREDICTED, type NotPredicted, ZINC_BEYOND } from "../constants/not-predicted.ts";
import type { Components } from "./composition.ts";
import type { Tube } from "./tube.ts";

const NEUTRAL = 7;

const LEAST = LEAST_PRESENT.value;

/** Rows to be asked after each step, and those for a tube whose test ends cold. */
const cold = NOT_PREDICTED.filter(({ when }) => when === "cold");
const always = NOT_PREDICTED.filter((row) => !cold.includes(row));

/** The latter by each component of their smallest group: most tubes hold none of them and are not asked further. */
const alwaysWith = new Map<string, NotPredicted[]>();
for (const row of always) {
  const [smallest] = [...row.together].sort((a, b) => a.length - b.length);
  for (const id of smallest) alwaysWith.set(id, [...(alwaysWith.get(id) ?? []), row]);
}

/** True when something in the tube would do what the constants and gates do not cover. */
export const beyondUs = (tube: Tube): boolean => foilBeyondUs(tube) || zincBeyondUs(tube) || meetsAny(tube);

/** The same of a tube as its test leaves it. */
export const leftBeyondUs = (tube: Tube): boolean =>
  tube.celsius === TEMPERATURE.room.value && cold.some((row) => meets(tube, row));

function meetsAny(tube: Tube): boolean {
  for (const id in tube.contents) if (alwaysWith.get(id)?.some((row) => meets(tube, row))) return true;
  return false;
}

function meets({ contents, celsius, air, result, reactions }: Tube, row: NotPredicted): boolean {
  const { together, fromPH = Number.NEGATIVE_INFINITY, toPH = Number.POSITIVE_INFINITY, when, after, unless } = row;
  const pH = result?.pH ?? NEUTRAL;
  if (pH < fromPH || pH > toPH) return false;
  if (when === "hot" && celsius <= TEMPERATURE.room.value) return false;
  if (when === "in air" && !air) return false;
  for (const group of together) if (!holdsOne(contents, group)) return false;
  const hasActed = (id: string) => [...reactions.values()].some(({ pair }) => pair === id);
  if (after !== undefined && !hasActed(after)) return false;
  return unless === undefined || !hasActed(unless);
}

function holdsOne(contents: Components, ids: readonly string[]): boolean {
  for (const id of ids) if ((contents[id] ?? 0) > LEAST) return true;
  return false;
}

/** Whether zinc and acid make hydrogen sulfide of a sulfite or thiosulfate in the tube (a row of `NOT_MIXED`): how much, no gate says. */
export const makesHydrogenSulfide = ({ contents, result }: Tube): boolean =>
  contents["Zn(s)"] !== undefined &&
  (result?.pH ?? NEUTRAL) < NEUTRAL &&
  ["SO3^2-", "S2O3^2-"].some((id) => (contents[id] ?? 0) > LEAST);

/** Foil outside warm alkali displaces metals and dissolves in acids at its own pace. */
function foilBeyondUs({ contents, celsius, reactions }: Tube): boolean {
  if (contents["Al(s)"] === undefined || celsius <= TEMPERATURE.room.value) return false;
  return ![...reactions.keys()].some((equation) => equation.includes("Al(s)"));
}

function zincBeyondUs({ contents, celsius, result }: Tube): boolean {
  if (contents["Zn(s)"] === undefined) return false;
  const holds = (id: string) => (contents[id] ?? 0) > 0;
  const pH = result?.pH ?? NEUTRAL;
  if (holds("NO3-") && pH < ZINC_BEYOND.acid.value) return true;
  if (pH > ZINC_BEYOND.alkali.value && celsius > TEMPERATURE.room.value) return true;
  return ZINC_BEYOND.actsOnIt.ids.some(holds);
}
