/** What a solution of one strength does to a person, by every source there is: the stricter followed, all shown. */
import { limitFrom, saidOnSheet } from "#words/class-recipes.ts";
import {
  type HazardBand,
  hazardLimits,
  type LimitRow,
  SEVERITIES,
  type Severity,
} from "../../constants/hazard-limits.ts";
import type { FirstAid, SourceKey } from "../../constants/reagents.ts";
import { molarMass } from "../../formula/molar-mass.ts";

/** What one source says at this strength. */
export interface Reading {
  /** "irritates skin and eyes", or "below its limits". */
  here: string;
  severity: Severity;
  /** "irritates skin and eyes from 0.13 mol/dm3 (0.5 %)" */
  limits: string[];
  source: SourceKey;
  /** The figures were read in the source, not remembered. */
  read: boolean;
  note?: string;
}

export interface HazardAt {
  /** The strictest reading. */
  severity: Severity;
  words: string;
  readings: Reading[];
  /** The sources do not say the same at this strength. */
  differ: boolean;
  /** The strictest reading is remembered: confirm it. */
  remembered: boolean;
}

/** Limits converted from per cent are good to two figures; so is a strength set against them. */
const FIGURES = 2;
const rounded = (amount: number): number => Number(amount.toPrecision(FIGURES));

/**
 * The strength at which a band begins, mol/dm3. A per cent by mass is taken as g in 100 cm3.
 *
 * @example bandStart("NaOH", { from: { percent: 2 }, ... }) // 0.5, from 20 g/dm3 and 39.997 g/mol
 */
export const bandStart = (formula: string, { from }: Pick<HazardBand, "from">): number =>
  rounded("percent" in from ? (from.percent * 10) / molarMass(formula) : from.molPerDm3);

const worse = (a: Severity, b: Severity): number => SEVERITIES.indexOf(a) - SEVERITIES.indexOf(b);
export const worst = (severities: readonly Severity[]): Severity => severities.toSorted(worse).at(-1) ?? "low hazard";

function readingOf(formula: string, molPerDm3: number, { source, read, bands, note }: LimitRow): Reading {
  const reached = bands.filter((band) => rounded(molPerDm3) >= bandStart(formula, band)).at(-1);
  const below = bands.length > 0 ? "below its limits" : "names no limit";
  return {
    here: saidOnSheet(reached?.words ?? below),
    severity: reached?.severity ?? "low hazard",
    limits: bands.map((band) => {
      const asPrinted = "percent" in band.from ? ` (${band.from.percent} %)` : "";
      return limitFrom(saidOnSheet(band.words), bandStart(formula, band), asPrinted);
    }),
    source,
    read,
    ...(note && { note: saidOnSheet(note) }),
  };
}

/**
 * The hazard of a solution, from the limits of every source. Undefined when no source with limits is known: that is not "low hazard".
 *
 * @param formula mhchem, water of crystallisation left out; a key of constants/hazard-limits.ts
 * @example hazardAt("NaOH", 0.4)?.words // "irritates skin and eyes"
 */
export function hazardAt(formula: string, molPerDm3: number): HazardAt | undefined {
  if (!Object.hasOwn(hazardLimits, formula)) return undefined;
  const readings = hazardLimits[formula].map((row) => readingOf(formula, molPerDm3, row));
  const severity = worst(readings.map((one) => one.severity));
  const strictest = readings.filter((one) => one.severity === severity);
  // Of several equally strict, one that was read speaks.
  const speaks = strictest.find(({ read }) => read) ?? strictest[0];
  return {
    severity,
    words: severity === "low hazard" ? saidOnSheet("low hazard") : speaks.here,
    readings,
    differ: readings.some((one) => one.severity !== severity),
    remembered: !speaks.read,
  };
}

/** First aid by how bad it can be. */
export const FIRST_AID_FOR: Readonly<Record<Severity, FirstAid>> = {
  "low hazard": "rinse",
  irritant: "irritant",
  harmful: "irritant",
  "damages eyes": "corrosive",
  corrosive: "corrosive",
  toxic: "toxic",
  serious: "toxic",
};
