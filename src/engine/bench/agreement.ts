/** When a recorded observation and a predicted one can be the same sight. */
import { CLEARS_AGAIN, GAS_EVIDENCE } from "../practical/gases.ts";
import { sameColour } from "../practical/same-colour.ts";
import type { GasSeen, Observation, Precipitate } from "../practical.ts";
import type { Prediction } from "./prediction.ts";

/** True when nothing changed that a person would write down; a precipitate that merely stays counts as no change. */
function nothing(seen: Observation): boolean {
  const heated = seen.residue !== undefined || seen.fumes || seen.sublimate || seen.droplets;
  const shown = seen.gas || seen.flame || seen.indicator;
  const changed = seen.precipitate || seen.effervescence || heated || shown;
  const moved = seen.fate === "dissolves" || seen.fate === "partly dissolves";
  return !changed && !moved && seen.solution === undefined;
}

/**
 * True when a person who recorded `recorded` may have had `predicted` before them. What the record does not mention was not looked
 * at and rules nothing out; "no visible change" rules out every change.
 */
export function mayBe(recorded: Observation, predicted: Observation): boolean {
  if (recorded.none) return nothing(predicted);
  const { precipitate, fate, solution, effervescence, gas, indicator } = recorded;
  const { residue, fumes, sublimate, droplets, flame } = recorded;
  if (precipitate === false && predicted.precipitate) return false;
  if (precipitate && !(predicted.precipitate && samePrecipitate(precipitate, predicted.precipitate))) return false;
  if (fate !== undefined && !sameFate(fate, predicted)) return false;
  if (solution !== undefined && predicted.solution !== undefined && !sameColour(solution, predicted.solution))
    return false;
  if (solution !== undefined && predicted.stays !== undefined && !sameColour(solution, predicted.stays)) return false;
  if (effervescence !== undefined && effervescence !== (predicted.effervescence ?? false)) return false;
  if (gas === false && predicted.gas) return false;
  if (gas && !(predicted.gas && sameGas(gas, predicted.gas))) return false;
  if (indicator && !(predicted.indicator && sameColour(indicator, predicted.indicator))) return false;
  if (residue !== undefined && !sameResidue(residue, predicted.residue)) return false;
  if (fumes !== undefined && !(predicted.fumes && sameColour(fumes, predicted.fumes))) return false;
  if (sublimate !== undefined && !(predicted.sublimate && sameColour(sublimate, predicted.sublimate))) return false;
  if (droplets && !predicted.droplets) return false;
  if (flame !== undefined && !sameFlame(flame, predicted.flame)) return false;
  return true;
}

/** The same colour. How thick it was is nobody's proof, but nobody calls plain what is at the limit of sight. */
const samePrecipitate = (recorded: Precipitate, predicted: Precipitate): boolean =>
  sameColour(recorded.colour, predicted.colour) && !(recorded.amount === "plain" && predicted.amount === "trace");

/**
 * The same sign of the same gas. Clouded limewater is one sight for two gases, reddened litmus for three: the name written beside it is a
 * conclusion. Who tells no more than a cloud may have seen it clear.
 */
function sameGas(recorded: GasSeen, predicted: GasSeen): boolean {
  const clouded = recorded.evidence === GAS_EVIDENCE.CO2;
  if (recorded.evidence !== predicted.evidence) return clouded && predicted.evidence === CLEARS_AGAIN;
  return clouded || ALSO_OTHERS.includes(recorded.evidence) || recorded.formula === predicted.formula;
}

/** Signs that more than one gas gives. */
const ALSO_OTHERS: readonly string[] = [CLEARS_AGAIN, GAS_EVIDENCE.HCl];

function sameFate(fate: NonNullable<Observation["fate"]>, predicted: Observation): boolean {
  if (predicted.fate !== undefined) return fate === predicted.fate;
  return fate === "remains" && Boolean(predicted.precipitate);
}

/** Nothing left, or a residue whose colours, where both name them, are the same. */
function sameResidue(recorded: NonNullable<Observation["residue"]>, predicted: Observation["residue"]): boolean {
  if (predicted === undefined) return false;
  if (recorded === false || predicted === false) return recorded === predicted;
  return (["hot", "cold"] as const).every((when) => {
    const own = recorded[when];
    const other = predicted[when];
    return own === undefined || other === undefined || sameColour(own, other);
  });
}

function sameFlame(recorded: NonNullable<Observation["flame"]>, predicted: Observation["flame"]): boolean {
  if (recorded === false || !predicted) return !recorded === !predicted;
  return sameColour(recorded, predicted);
}

/**
 * The same for a reading picked from a list of complete readings: what it does not mention did not happen. "No visible change" still
 * covers a precipitate that merely stays, and a colour of the liquid is not asked of a reading that names none (see `namesOther`).
 */
export const sameSight = (picked: Observation, predicted: Observation): boolean =>
  mayBe(picked, predicted) && (picked.none === true || mayBe(predicted, asThick(picked, predicted)));

/** With as much of a precipitate as the other has: amounts are compared in one direction only. */
const asThick = (one: Observation, { precipitate }: Observation): Observation =>
  one.precipitate && precipitate ? { ...one, precipitate: { ...one.precipitate, amount: precipitate.amount } } : one;

/** Whether a reading names a colour of the liquid that is not in sight in the prediction. */
export const namesOther = ({ solution: named }: Observation, { colours }: Prediction): boolean =>
  named !== undefined && named !== "colourless" && !colours.some((one) => sameColour(one, named));

/**
 * True when everything an author states is what a salt shows: stricter than `mayBe`, which forgives what a reader leaves out. A colour of
 * the liquid must be its colour at the end, and nothing may be stated of a gas, a residue or a flame that the test does not look for.
 */
export function isTrueOf(stated: Observation, { readings, solution }: Prediction): boolean {
  if (stated.solution !== undefined && !(solution !== undefined && sameColour(stated.solution, solution))) return false;
  return readings.some(
    (reading) =>
      mayBe(stated, reading) &&
      (stated.gas === undefined || reading.gas !== undefined) &&
      (stated.residue === undefined || reading.residue !== undefined) &&
      (stated.indicator === undefined || reading.indicator !== undefined) &&
      (stated.flame === undefined || reading.flame !== undefined),
  );
}
