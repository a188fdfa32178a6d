/**
 * Amounts as people write them on a paper ("1 cm3", "0.1 mol/dm3", "2 min"), read once into numbers that carry their unit in the
 * property name. Each reader is a zod schema, so a wrong amount is reported with its place, what was found and what was expected.
 */
import * as z from "zod/mini";
import { CONCENTRATION, DURATION, describe, type Kind, MASS, readAmount, VOLUME } from "./amount.ts";
import { readAs } from "./dispatch.ts";

export { describe } from "./amount.ts";

/** A volume of liquid in cm3. */
export interface Volume {
  cm3: number;
}
/** A mass of solid in g. */
export interface Mass {
  g: number;
}
/** A concentration in mol/dm3. */
export interface Concentration {
  molPerDm3: number;
}
/** The strength of a sample; `about`: the paper gives none, and this one is taken for usual. */
export interface Strength extends Concentration {
  about?: true;
}
/** A length of time in min. */
export interface Duration {
  min: number;
}

const ABOUT = /^about +/i;

/** @param wrap is told whether "about" stands before the amount; one that does not ask for it refuses it */
function amountSchema<T>(kind: Kind, wrap: (amount: number, about?: true) => T): z.ZodMiniType<T> {
  const text = z.string({
    error: (issue) => `found ${describe(issue.input)}, expected ${kind.name} such as "${kind.example}"`,
  });
  return readAs(text, (written, refuse): T => {
    const about = wrap.length > 1 && ABOUT.test(written.trim());
    const amount = readAmount(about ? written.trim().replace(ABOUT, "") : written, kind);
    return typeof amount === "number" ? wrap(amount, about || undefined) : refuse(amount.fault);
  });
}

/** "1 cm3" -> { cm3: 1 }. Also reads dm3 and ml. */
export const volume = amountSchema<Volume>(VOLUME, (cm3) => ({ cm3 }));
/** "0.2 g" -> { g: 0.2 }. Also reads mg. */
export const mass = amountSchema<Mass>(MASS, (g) => ({ g }));
/** "0.1 mol/dm3" -> { molPerDm3: 0.1 }. */
export const concentration = amountSchema<Concentration>(CONCENTRATION, (molPerDm3) => ({ molPerDm3 }));
/** The same of a sample, which may be "about 0.1 mol/dm3". */
export const strength = amountSchema<Strength>(CONCENTRATION, (molPerDm3, about) => ({
  molPerDm3,
  ...(about && { about }),
}));
/** "2 min" -> { min: 2 }. Also reads s and h. */
export const duration = amountSchema<Duration>(DURATION, (min) => ({ min }));
